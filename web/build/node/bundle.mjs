// node bundle.mjs LOCK WHEELS EXAMPLES ZIP LIST: one stored zip of compiled modules, holding what
// the example requests import, and nothing else. Compiled inside Pyodide, because byte code
// belongs to one Python version. Stored, because the wire and the disk compress better than a zip.
import { readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { askAll, requestTexts } from "./examples.mjs";
import { bytesOf, startPython } from "./python.mjs";

const [lockFile, wheels, examples, zipFile, listFile] = process.argv.slice(2);
const texts = requestTexts(examples);
const packer = readFileSync(
  join(dirname(fileURLToPath(import.meta.url)), "pack_modules.py"),
  "utf8",
);

const whole = await startPython({
  lockFileContents: readFileSync(lockFile, "utf8"),
  packageBaseUrl: wheels,
});
await whole.loadPackage(["pycore"], { messageCallback: () => undefined });
const expected = askAll(whole.pyimport("pycore.desk").handle, texts);
whole.runPython(packer);
const packed = whole.runPython("pack_modules('/tmp/python.zip')").toJs();
writeFileSync(zipFile, whole.FS.readFile("/tmp/python.zip"));
writeFileSync(listFile, JSON.stringify(packed, null, 1) + "\n");

// The zip alone has to give the same answers; a module that is missing shows here, not on a phone.
const trimmed = await startPython({ stdLibURL: zipFile });
const got = askAll(trimmed.pyimport("pycore.desk").handle, texts);
expected.forEach((reply, i) => {
  if (reply !== got[i]) throw new Error(`the zip answers ${texts[i]} with ${got[i]}, not ${reply}`);
});
console.log(`${packed.length} modules, ${bytesOf(zipFile).length} bytes, ${texts.length} requests`);
process.exit(0);

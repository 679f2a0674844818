// node bundle.mjs LOCK WHEELS EXAMPLES COMPILED SOURCES LIST FOLDER: two stored zips that hold the modules
// which the example requests import, and nothing else. COMPILED is what the memory image is made
// from; it is made inside Pyodide, because byte code belongs to one Python version. SOURCES is sent
// to phones for the plain start: it is a third of the byte code on the wire, and hardly ever read.
// FOLDER has the runtime that phones get. Stored, because the wire compresses better than a zip.
import { readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { askAll, requestTexts } from "./examples.mjs";
import { bytesOf, startPython } from "./python.mjs";

const [lockFile, wheels, examples, compiledFile, sourcesFile, listFile, folder] =
  process.argv.slice(2);
const texts = requestTexts(examples);
const here = dirname(fileURLToPath(import.meta.url));

const whole = await startPython({
  lockFileContents: readFileSync(lockFile, "utf8"),
  packageBaseUrl: wheels,
});
await whole.loadPackage(["pycore"], { messageCallback: () => undefined });
const expected = askAll(whole.pyimport("pycore.desk").handle, texts);
for (const name of ["strip_source.py", "pack_modules.py"])
  whole.FS.writeFile(`/home/pyodide/${name}`, readFileSync(join(here, name), "utf8"));
const pack = whole.pyimport("pack_modules").pack_modules;
const packed = pack("/tmp/compiled.zip", "/tmp/sources.zip").toJs();
writeFileSync(compiledFile, whole.FS.readFile("/tmp/compiled.zip"));
writeFileSync(sourcesFile, whole.FS.readFile("/tmp/sources.zip"));
writeFileSync(listFile, JSON.stringify(packed, null, 1) + "\n");

// The sources alone have to give the same answers; a module that is missing shows here, not on a phone.
const trimmed = await startPython({ stdLibURL: sourcesFile, indexURL: `${folder}/` });
const got = askAll(trimmed.pyimport("pycore.desk").handle, texts);
expected.forEach((reply, i) => {
  if (reply !== got[i])
    throw new Error(`the sources answer ${texts[i]} with ${got[i]}, not ${reply}`);
});
console.log(
  `${packed.length} modules, ${bytesOf(sourcesFile).length} bytes of source, ${texts.length} requests`,
);
process.exit(0);

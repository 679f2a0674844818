// node resolve.mjs WHEELS OWN_WHEEL LOCK: lets micropip choose among local wheels, once, and
// writes down what it chose. The phone never resolves and never asks a network.
import { readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { serveWheels } from "./local_index.mjs";
import { bytesOf, startPython } from "./python.mjs";

const [wheels, ownWheelFolder, lockFile] = process.argv.slice(2);
const only = (folder, test) => {
  const found = readdirSync(folder).filter(test);
  if (found.length !== 1) throw new Error(`${folder} should hold one such wheel: ${found}`);
  return found[0];
};
const micropipWheel = only(wheels, (name) => name.startsWith("micropip-"));
const ownWheel = only(ownWheelFolder, (name) => name.endsWith(".whl"));

const python = await startPython({});
python.unpackArchive(bytesOf(join(wheels, micropipWheel)), "whl");
python.FS.mkdirTree("/w");
python.FS.writeFile(`/w/${ownWheel}`, bytesOf(join(ownWheelFolder, ownWheel)));

const index = await serveWheels(wheels);
let frozen;
try {
  frozen = JSON.parse(
    await python.runPythonAsync(`
import micropip
await micropip.install(["emfs:/w/${ownWheel}"], index_urls=["${index.pattern}"])
micropip.freeze()
`),
  );
} finally {
  index.close();
}

const packages = Object.keys(frozen.packages)
  .filter((name) => name !== "micropip")
  .sort()
  .map((name) => {
    const entry = frozen.packages[name];
    return [name, { ...entry, file_name: entry.file_name.split("/").pop() }];
  });
if (!packages.some(([name]) => name === "pycore")) throw new Error("pycore was not resolved");
writeFileSync(
  lockFile,
  JSON.stringify({ info: frozen.info, packages: Object.fromEntries(packages) }, null, 1) + "\n",
);
console.log(packages.map(([name, entry]) => `${name} ${entry.version}`).join("\n"));
process.exit(0);

// Answers on stdout, one line for each line on stdin, with the Python that is shipped to the phone.
// Arguments: the folder web/dist/py-<hash>, inside.py, which holds the function `calculate`, and the
// lock file beside the pinned Pyodide, whose loader is part of the worker's script on the phone.
import { readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { createInterface } from "node:readline";
import { pathToFileURL } from "node:url";

const [folder, inside, lock] = process.argv.slice(2).map((name) => resolve(name));
const { loadPyodide } = await import(pathToFileURL(join(dirname(lock), "pyodide.mjs")).href);
const python = await loadPyodide({
  indexURL: `${folder}/`,
  stdLibURL: join(folder, "python_stdlib.zip"),
  // The same empty lock as on the phone: whatever is not in the shipped zip is not there.
  lockFileContents: JSON.stringify({ info: JSON.parse(readFileSync(lock, "utf8")).info, packages: {} }),
});
python.FS.writeFile("/home/pyodide/inside.py", readFileSync(inside, "utf8"));
const { calculate } = python.pyimport("inside");
for await (const line of createInterface({ input: process.stdin })) {
  let answer;
  try {
    answer = { result: JSON.parse(calculate(line)) };
  } catch (error) {
    answer = { error: String(error) };
  }
  process.stdout.write(`${JSON.stringify(answer)}\n`);
}

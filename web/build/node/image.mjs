// node image.mjs ZIP LIST EXAMPLES FOLDER: Python's memory with pycore imported and warm, so that the phone
// lays it down instead of starting Python. In FOLDER: the head, which is what Pyodide wants of a
// snapshot besides the memory; the pages in which the memory differs from that of a module that has
// just begun; and a zip with nothing in it, since Pyodide asks for one and everything is imported.
import "./steady.mjs";
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { blankFreeMemory } from "./blank.mjs";
import { askAll, requestTexts } from "./examples.mjs";
import { startPython } from "./python.mjs";

const PAGE_BYTES = 4096;

/** The end record of a zip file without entries. */
const EMPTY_ZIP = Uint8Array.from([0x50, 0x4b, 5, 6, ...Array(18).fill(0)]);

const [zipFile, listFile, examples, folder] = process.argv.slice(2);
// The runtime that phones get: indices of functions, which the memory holds, are its own.
const indexURL = `${folder}/`;
const texts = requestTexts(examples);
const emptyFile = join(folder, "empty.zip");
writeFileSync(emptyFile, EMPTY_ZIP);

async function makeSnapshot() {
  const python = await startPython({ stdLibURL: zipFile, indexURL, _makeSnapshot: true });
  const desk = python.pyimport("pycore.desk");
  const replies = askAll(desk.handle, texts);
  // Every module of the zip is imported now: a late import would meet a file system without the zip.
  python.runPython(IMPORT_ALL);
  desk.destroy();
  python.runPython("import gc; gc.collect(); del gc");
  blankFreeMemory(python);
  return { snapshot: python.makeMemorySnapshot(), replies };
}

const IMPORT_ALL = `
import importlib
for name in ${readFileSync(listFile, "utf8").trim()}:
    if not name.endswith("__main__"):
        importlib.import_module(name)
del name, importlib
`;

/** The snapshot without its memory, and its memory. */
function parts(snapshot) {
  const bytes = new Uint8Array(snapshot.buffer, snapshot.byteOffset, snapshot.byteLength);
  const at = new Uint32Array(bytes.buffer, bytes.byteOffset, 4)[1];
  return { head: bytes.slice(0, at), memory: bytes.slice(at) };
}

/** Starts as the phone does: `lay` is handed the module before Python looks at its memory. */
function startFrom(head, lay) {
  return startPython({
    stdLibURL: emptyFile,
    indexURL,
    _loadSnapshot: head,
    createPyodideModule: async (settings) => {
      const module = await (
        await import(pathToFileURL(join(folder, "pyodide.asm.mjs")).href)
      ).default(settings);
      lay(module);
      return module;
    },
  });
}

/** Runs of pages that differ, as pairs of start and length in bytes. */
function differing(memory, fresh) {
  const runs = [];
  for (let start = 0; start < memory.length; start += PAGE_BYTES) {
    const page = memory.subarray(start, start + PAGE_BYTES);
    const old = fresh.subarray(start, start + PAGE_BYTES);
    if (old.length === page.length ? Buffer.compare(page, old) === 0 : page.every((b) => b === 0))
      continue;
    const last = runs.at(-1);
    if (last !== undefined && last[0] + last[1] === start) last[1] += page.length;
    else runs.push([start, page.length]);
  }
  return runs;
}

/** Little-endian words: count of runs, length of the memory, then the runs; then their bytes. */
function packed(memory, runs) {
  const words = Uint32Array.from([runs.length, memory.length, ...runs.flat()]);
  const bytes = runs.map(([start, length]) => memory.subarray(start, start + length));
  return Buffer.concat([Buffer.from(words.buffer), ...bytes]);
}

const { snapshot, replies } = await makeSnapshot();
const { head, memory } = parts(snapshot);
let runs = [];
let room = 0;
const python = await startFrom(head, (module) => {
  room = module.HEAPU8.length;
  runs = differing(memory, module.HEAPU8);
  if (room < memory.length) module.growMemory(memory.length);
  for (const [start, length] of runs)
    module.HEAPU8.set(memory.subarray(start, start + length), start);
});

// The memory alone has to answer everything, with the same words and without a file to import from.
const modules = () => python.runPython("import sys; len(sys.modules)");
const imported = modules();
const again = askAll(python.pyimport("pycore.desk").handle, texts);
replies.forEach((reply, i) => {
  if (reply !== again[i]) throw new Error(`the image answers ${texts[i]} with ${again[i]}`);
});
if (modules() !== imported) throw new Error("a request imports what the image does not hold");

const pages = packed(memory, runs);
writeFileSync(join(folder, "core.head.bin"), head);
writeFileSync(join(folder, "core.pages.bin"), pages);
const megabytes = (bytes) => (bytes / 1e6).toFixed(1);
console.log(
  `${megabytes(pages.length)} MB in ${runs.length} runs, memory used up to ` +
    `${megabytes(runs.at(-1)[0] + runs.at(-1)[1])} of ${megabytes(room)} MB, sha256 ` +
    createHash("sha256").update(pages).digest("hex").slice(0, 12),
);
process.exit(0);

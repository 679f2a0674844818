// node cut_runtime.mjs PYODIDE FOLDER READER…: Pyodide's files without the names that only compiled
// extension packages ask for. We have none of those, and of 8,560 exported names the glue itself
// reads 266. No instruction is touched: WebAssembly loses lines of its table of exports, the glue
// the statements that copy them. READER are further files that read names of the module. A name
// stays when its text stands anywhere in the glue or in a reader, so that too much stays at worst.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const [from, to, ...readers] = process.argv.slice(2);
const BEGIN = "function assignWasmExports(wasmExports){";
const COPY = /^([\w$]+)=Module\["[\w$]+"\]=wasmExports\["([\w$]+)"\](\.value>>>0)?$/;
const EXPORTS = 7;

const glue = readFileSync(join(from, "pyodide.asm.mjs"), "utf8");
const wasm = readFileSync(join(from, "pyodide.asm.wasm"));
const read = ["pyodide.mjs"].map((name) => join(from, name)).concat(readers);
const others = read.map((path) => readFileSync(path, "utf8")).join("\n");

// Names that WebAssembly wants from itself, through the glue, are kept as well.
const wanted = globalThis.WebAssembly.Module.imports(new globalThis.WebAssembly.Module(wasm))
  .filter(({ module }) => module.startsWith("GOT."))
  .map(({ name }) => name);

const words = (...texts) => new Set(texts.join("\n").match(/[\w$]+/g));

/** The glue without the copies, and the variables for them, that nothing reads. */
function cutGlue() {
  const at = glue.indexOf(BEGIN);
  const declared = glue.lastIndexOf("var ", at);
  const end = glue.indexOf("}", at);
  const copies = glue
    .slice(at + BEGIN.length, end)
    .split(";")
    .filter(Boolean);
  const names = glue
    .slice(declared + "var ".length, at)
    .replace(";", "")
    .split(",");
  if (at < 0 || !names.every((name) => /^[\w$]+$/.test(name)))
    throw new Error("the glue has another form than that of the pinned Pyodide");
  const used = words(glue.slice(0, declared), glue.slice(end), others, ...wanted);
  const dropped = new Set();
  const kept = copies.filter((copy) => {
    const [, variable, name] = COPY.exec(copy) ?? [];
    if (variable === undefined || used.has(variable) || used.has(name)) return true;
    dropped.add(variable);
    return false;
  });
  const variables = names.filter((name) => !dropped.has(name));
  return (
    `${glue.slice(0, declared)}var ${variables.join(",")};${BEGIN}${kept.join(";")}` +
    glue.slice(end)
  );
}

/** The number at a place in LEB128, and the place after it. */
function numberAt(place) {
  let value = 0;
  for (let shift = 0; ; shift += 7, place += 1) {
    value |= (wasm[place] & 127) << shift;
    if (wasm[place] < 128) return [value >>> 0, place + 1];
  }
}

function numberBytes(value) {
  const bytes = [];
  for (; value > 127; value >>>= 7) bytes.push((value & 127) | 128);
  return Buffer.from([...bytes, value]);
}

/** The table of exports with only those entries whose name is used. */
function cutExports(start, used) {
  let [count, at] = numberAt(start);
  const kept = [];
  for (; count > 0; count -= 1) {
    const [length, nameAt] = numberAt(at);
    const name = wasm.subarray(nameAt, nameAt + length).toString();
    const [, next] = numberAt(nameAt + length + 1);
    if (used.has(name)) kept.push(wasm.subarray(at, next));
    at = next;
  }
  console.log(`${kept.length} exported names kept`);
  return Buffer.concat([numberBytes(kept.length), ...kept]);
}

function cutWasm(used) {
  const parts = [wasm.subarray(0, 8)];
  for (let at = 8; at < wasm.length;) {
    const [length, start] = numberAt(at + 1);
    const end = start + length;
    if (wasm[at] === EXPORTS) {
      const table = cutExports(start, used);
      parts.push(Buffer.from([EXPORTS]), numberBytes(table.length), table);
    } else parts.push(wasm.subarray(at, end));
    at = end;
  }
  return Buffer.concat(parts);
}

const newGlue = cutGlue();
writeFileSync(join(to, "pyodide.asm.mjs"), newGlue);
writeFileSync(join(to, "pyodide.asm.wasm"), cutWasm(words(newGlue, others, ...wanted)));

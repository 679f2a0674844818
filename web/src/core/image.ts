// Python's memory as the build left it, with pycore imported: laid down instead of started.
import type { loadPyodide } from "pyodide";
import type { Files } from "./files";

export type PyodideOptions = NonNullable<Parameters<typeof loadPyodide>[0]>;

/** What is used of Pyodide's module, which its own types leave out. */
interface Module {
  readonly HEAPU8: Uint8Array;
  readonly HEAP32: Int32Array;
  readonly __PyRuntime: number;
  readonly __PyEM_EMSCRIPTEN_TRAMPOLINE_OFFSET: number;
  growMemory(bytes: number): void;
}
type MakeModule = (settings: unknown) => Promise<Module>;

const PAGES = "core.pages.bin";
const HEADER_WORDS = 2;
const BYTES_PER_WORD = 4;

/** What loadPyodide needs in order to start from the image. */
export function imageOptions(files: Files): PyodideOptions {
  // Begun at once, needed late.
  const head = files.bytes("core.head.bin");
  let pages: Promise<ArrayBuffer> | null = files.bytes(PAGES);
  // One that cannot be read ends the start by itself, also while nobody waits for its bytes yet.
  for (const bytes of [head, pages]) bytes.catch(() => undefined);
  const make: MakeModule = async (settings) => {
    const glue = (await import(/* @vite-ignore */ `${files.home}pyodide.asm.mjs`)) as {
      default: MakeModule;
    };
    const module = await glue.default(settings);
    if (pages !== null) layDown(module, await pages);
    // They stand in Python's memory now; Pyodide keeps this function, and would keep them with it.
    pages = null;
    return module;
  };
  return {
    stdLibURL: `${files.home}empty.zip`,
    _loadSnapshot: head,
    createPyodideModule: make as unknown as NonNullable<PyodideOptions["createPyodideModule"]>,
  };
}

/** `pages`: count of runs, length of the memory, start and length of each run, then their bytes. */
function layDown(module: Module, pages: ArrayBuffer): void {
  const [runs = 0, length = 0] = new Uint32Array(pages, 0, HEADER_WORDS);
  const table = new Uint32Array(pages, HEADER_WORDS * BYTES_PER_WORD, 2 * runs);
  // A call helper is an index that each engine chooses itself; the image holds none.
  const own = module.HEAP32[helperAt(module)] ?? 0;
  if (module.HEAPU8.length < length) module.growMemory(length);
  let at = (HEADER_WORDS + 2 * runs) * BYTES_PER_WORD;
  for (let i = 0; i < 2 * runs; i += 2) {
    const [start = 0, bytes = 0] = table.subarray(i, i + 2);
    module.HEAPU8.set(new Uint8Array(pages, at, bytes), start);
    at += bytes;
  }
  module.HEAP32[helperAt(module)] = own;
}

function helperAt(module: Module): number {
  const offset = module.HEAP32[module.__PyEM_EMSCRIPTEN_TRAMPOLINE_OFFSET / BYTES_PER_WORD] ?? 0;
  return (module.__PyRuntime + offset) / BYTES_PER_WORD;
}

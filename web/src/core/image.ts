// Python's memory as the build left it, with pycore imported: laid down instead of started.
import type { loadPyodide } from "pyodide";
import { PYTHON, type Files } from "./files";

export type PyodideOptions = NonNullable<Parameters<typeof loadPyodide>[0]>;

/** What is used of Pyodide's module, which its own types leave out. */
interface Module {
  readonly HEAPU8: Uint8Array;
  readonly HEAP32: Int32Array;
  readonly __PyRuntime: number;
  readonly __PyEM_EMSCRIPTEN_TRAMPOLINE_OFFSET: number;
  growMemory(bytes: number): void;
}
type MakeModule = NonNullable<PyodideOptions["createPyodideModule"]>;
type Made = Awaited<ReturnType<MakeModule>> & Module;
/** What Pyodide's large script exports. */
export interface Glue {
  default(settings: unknown): Promise<Made>;
}

/** Small bytes as the build wrote them into this script. */
export function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
}

const PAGES = "core.pages.bin";
/** Everything is imported in the image; Pyodide asks for a zip all the same. */
export const EMPTY_ZIP = "empty.zip";
const HEADER_WORDS = 2;
const BYTES_PER_WORD = 4;

/** What loadPyodide needs in order to start from the image. */
export function imageOptions(files: Files, glue: Promise<Glue>): PyodideOptions {
  // Begun at once, needed late.
  let pages: Promise<ArrayBuffer> | null = files.bytes(PAGES);
  return {
    stdLibURL: files.home + EMPTY_ZIP,
    _loadSnapshot: bytesOf(PYTHON.imageHead),
    createPyodideModule: async (settings) => {
      const module = await (await glue).default(settings);
      if (pages !== null) layDown(module, await pages);
      // They stand in Python's memory now; Pyodide keeps this function, and would keep them with it.
      pages = null;
      return module;
    },
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

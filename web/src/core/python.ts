// First: what it says is asked for when Pyodide's own module runs.
import "./classic";
import { loadPyodide } from "pyodide";
import type { StartKind } from "./api";
import { Files, PYTHON } from "./files";
import { bytesOf, EMPTY_ZIP, imageOptions, type Glue, type PyodideOptions } from "./image";

type Handle = (text: string) => string;

const PYTHON_ZIP = "python_stdlib.zip";
const RUNTIME = "pyodide.asm.wasm";
const GLUE = "pyodide.asm.mjs";

/** Rejects as soon as the start cannot succeed any more; never resolves. */
interface Deadline {
  readonly dead: Promise<never>;
  readonly die: (reason: string) => void;
}

/** Starts Python from this build's files and gives pycore's one door. Rejects with a reason. */
export async function startPython(kind: StartKind): Promise<Handle> {
  compileNothing();
  const deadline = makeDeadline();
  self.addEventListener("unhandledrejection", (event) => {
    deadline.die(`rejected: ${String(event.reason)}`);
  });
  const files = new Files(deadline.die);
  answerFetches(files);
  const loaded = load(kind, files).then(async (handle) => {
    await files.proven();
    return handle;
  });
  return Promise.race([loaded, deadline.dead]);
}

/** Where WebAssembly is forbidden Pyodide waits for ever; the smallest module there is throws at once. */
function compileNothing(): void {
  new WebAssembly.Module(new Uint8Array([0, 0x61, 0x73, 0x6d, 1, 0, 0, 0]));
}

function makeDeadline(): Deadline {
  let die: (reason: string) => void = () => undefined;
  const dead = new Promise<never>((_, reject) => {
    die = (reason) => {
      reject(new Error(reason));
    };
  });
  dead.catch(() => undefined);
  return { dead, die };
}

/**
 * Compiles the runtime before Pyodide asks for it, which has to run itself first; straight from the response,
 * since only so the browser keeps what it has compiled.
 */
function compileAhead(files: Files): void {
  const compiled = WebAssembly.compileStreaming(files.fetched(RUNTIME));
  files.proveAfter(compiled, RUNTIME);
  WebAssembly.instantiateStreaming = async (_, imports) => {
    const module = await compiled;
    return { module, instance: await WebAssembly.instantiate(module, imports) };
  };
}

/** Gives Pyodide what it asks for; of the runtime no more than a sign that it is there. */
function answerFetches(files: Files): void {
  self.fetch = async (input) => {
    const address = input instanceof Request ? input.url : String(input);
    const name = address.slice(files.home.length);
    if (name === RUNTIME) return new Response();
    return new Response(name === EMPTY_ZIP ? bytesOf(PYTHON.emptyZip) : await files.bytes(name));
  };
}

async function load(kind: StartKind, files: Files): Promise<Handle> {
  const glue = import(/* @vite-ignore */ files.home + GLUE) as Promise<Glue>;
  files.proveAfter(glue, GLUE);
  compileAhead(files);
  const python = await loadPyodide({
    ...(kind === "image" ? imageOptions(files, glue) : plainOptions(files, glue)),
    indexURL: files.home,
    packageBaseUrl: files.home,
    // Everything is in the zip; a lock that lists nothing keeps Pyodide from fetching its own.
    lockFileContents: JSON.stringify({ info: PYTHON.lockInfo, packages: {} }),
  });
  const desk = python.pyimport("pycore.desk") as { handle: Handle };
  return desk.handle;
}

function plainOptions(files: Files, glue: Promise<Glue>): PyodideOptions {
  return {
    stdLibURL: files.home + PYTHON_ZIP,
    createPyodideModule: async (settings) => (await glue).default(settings),
  };
}

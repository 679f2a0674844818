import type { PyodideAPI } from "pyodide";
import type { StartKind } from "./api";
import { Files, PYTHON } from "./files";
import { imageOptions, type PyodideOptions } from "./image";

type Handle = (text: string) => string;

const PYTHON_ZIP = "python_stdlib.zip";
const RUNTIME = "pyodide.asm.wasm";
const CODE = ["pyodide.mjs", "pyodide.asm.mjs"];

/** Rejects as soon as the start cannot succeed any more; never resolves. */
interface Deadline {
  readonly dead: Promise<never>;
  readonly die: (reason: string) => void;
}

/** Starts Python from this build's files and gives pycore's one door. Rejects with a reason. */
export async function startPython(kind: StartKind): Promise<Handle> {
  compileNothing();
  refuseClassicScripts();
  const deadline = makeDeadline();
  self.addEventListener("unhandledrejection", (event) => {
    deadline.die(`rejected: ${String(event.reason)}`);
  });
  const home = new URL(`../${PYTHON.folder}/`, self.location.href).href;
  const files = new Files(home, deadline.die);
  guardRuntime(deadline);
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

/** Pyodide only warns when its runtime cannot be compiled, and then waits for ever. */
function guardRuntime(deadline: Deadline): void {
  const real = WebAssembly.instantiateStreaming.bind(WebAssembly);
  WebAssembly.instantiateStreaming = async (source, imports) => {
    try {
      return await real(source, imports);
    } catch (error) {
      deadline.die(`${RUNTIME}: ${String(error)}`);
      throw error;
    }
  };
}

/** Gives Pyodide its files. The runtime is asked for at once: Pyodide has to be read and run first. */
function answerFetches(files: Files): void {
  const runtime = files.response(RUNTIME);
  runtime.catch(() => undefined);
  files.proveBeside(RUNTIME);
  for (const name of CODE) files.proveBeside(name);
  self.fetch = async (input) => {
    const address = input instanceof Request ? input.url : String(input);
    const name = address.slice(files.home.length);
    if (name === RUNTIME) return runtime;
    return new Response(await files.bytes(name));
  };
}

/**
 * Pyodide asks by a call whether its worker is a classic one. A module worker refuses as this does, but
 * here the page's policy would refuse first and write an error into the console at every start.
 */
function refuseClassicScripts(): void {
  self.importScripts = () => {
    throw new TypeError("a module worker has no classic scripts");
  };
}

async function load(kind: StartKind, files: Files): Promise<Handle> {
  const options = kind === "image" ? imageOptions(files) : { stdLibURL: files.home + PYTHON_ZIP };
  const runtime = (await import(/* @vite-ignore */ `${files.home}pyodide.mjs`)) as {
    loadPyodide(options: PyodideOptions): Promise<PyodideAPI>;
  };
  const python = await runtime.loadPyodide({ ...sharedOptions(files.home), ...options });
  const desk = python.pyimport("pycore.desk") as { handle: Handle };
  return desk.handle;
}

function sharedOptions(home: string): PyodideOptions {
  return {
    indexURL: home,
    packageBaseUrl: home,
    // Everything is in the zip; a lock that lists nothing keeps Pyodide from fetching its own.
    lockFileContents: JSON.stringify({ info: PYTHON.lockInfo, packages: {} }),
  };
}

import type { PyodideAPI } from "pyodide";
import type { StartKind } from "./api";
import { imageOptions, type PyodideOptions } from "./image";
import { provenBytes, PYTHON } from "./proof";

type Handle = (text: string) => string;

const PYTHON_ZIP = "python_stdlib.zip";
const RUNTIME = "pyodide.asm.wasm";
/** Imported, which compares nothing: they are read a second time for that. */
const CODE = ["pyodide.mjs", "pyodide.asm.mjs"];
/** Hashed beside the start instead. */
const LARGE = [RUNTIME, "core.pages.bin"];

/** Rejects as soon as the start cannot succeed any more; never resolves. */
interface Deadline {
  readonly dead: Promise<never>;
  die(reason: string): void;
}

/** Starts Python from this build's files and gives pycore's one door. Rejects with a reason. */
export async function startPython(kind: StartKind): Promise<Handle> {
  compileNothing();
  refuseClassicScripts();
  const home = new URL(`../${PYTHON.folder}/`, self.location.href).href;
  const deadline = makeDeadline();
  self.addEventListener("unhandledrejection", (event) => {
    deadline.die(`rejected: ${String(event.reason)}`);
  });
  guardFetch(deadline);
  const proven = Promise.all([
    beginRuntime(home, deadline),
    ...CODE.map((name) => fetch(home + name)),
  ]);
  proven.catch((error: unknown) => {
    deadline.die(String(error));
  });
  const loaded = load(kind, home).then(async (handle) => {
    await proven;
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
 * Small files are compared with their hashes by the browser itself. A fetch that fails ends the start:
 * Pyodide only warns when a file cannot be read, and then waits for ever.
 */
function guardFetch(deadline: Deadline): void {
  const real = self.fetch.bind(self);
  self.fetch = (input, init) => {
    const address = input instanceof Request ? input.url : String(input);
    const name = address.split("/").pop() ?? "";
    const integrity = LARGE.includes(name) ? undefined : PYTHON.hashes[name];
    const response = real(input, integrity === undefined ? init : { ...init, integrity });
    response.then(
      (got) => {
        if (!got.ok) deadline.die(`${name}: status ${got.status}`);
      },
      (error: unknown) => {
        deadline.die(`${name}: ${String(error)}`);
      },
    );
    return response;
  };
}

/**
 * Asks for the runtime before Pyodide does, which has to be read and run itself first. It is compiled
 * from the response itself while that is read, since only then the browser keeps what it has compiled;
 * a copy of it is proven meanwhile. Where it cannot be compiled Pyodide would wait for ever.
 */
async function beginRuntime(home: string, deadline: Deadline): Promise<void> {
  const guarded = self.fetch.bind(self);
  const instantiate = WebAssembly.instantiateStreaming.bind(WebAssembly);
  WebAssembly.instantiateStreaming = (source, imports) => {
    const made = instantiate(source, imports);
    made.catch((error: unknown) => {
      deadline.die(`${RUNTIME}: ${String(error)}`);
    });
    return made;
  };
  const ahead = guarded(home + RUNTIME);
  const copy = ahead.then((response) => response.clone());
  self.fetch = (input, init) => {
    if (input !== home + RUNTIME) return guarded(input, init);
    self.fetch = guarded;
    // Not before it has been copied: a body can be read once.
    return copy.then(() => ahead);
  };
  await provenBytes(copy, RUNTIME);
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

async function load(kind: StartKind, home: string): Promise<Handle> {
  const runtime = (await import(/* @vite-ignore */ `${home}pyodide.mjs`)) as {
    loadPyodide(options: PyodideOptions): Promise<PyodideAPI>;
  };
  const python = await runtime.loadPyodide({
    ...sharedOptions(home),
    ...(kind === "image" ? imageOptions(home) : { stdLibURL: `${home}${PYTHON_ZIP}` }),
  });
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

import type { PyodideAPI } from "pyodide";
import type { StartKind } from "./api";
import { imageOptions, type PyodideOptions } from "./image";

type Handle = (text: string) => string;

const PYTHON_ZIP = "python_stdlib.zip";

/** Rejects as soon as the start cannot succeed any more; never resolves. */
interface Deadline {
  readonly dead: Promise<never>;
  die(reason: string): void;
}

/** Starts Python from this build's files and gives pycore's one door. Rejects with a reason. */
export async function startPython(kind: StartKind): Promise<Handle> {
  compileNothing();
  const deadline = makeDeadline();
  self.addEventListener("unhandledrejection", (event) => {
    deadline.die(`rejected: ${String(event.reason)}`);
  });
  guardFetch(deadline);
  return Promise.race([load(kind), deadline.dead]);
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
 * Every file is compared with the hash that the build wrote down: damaged bytes would otherwise
 * be run, and might still answer. A fetch that fails ends the start: Pyodide itself only warns
 * when its WebAssembly cannot be read, and then waits for ever.
 */
function guardFetch(deadline: Deadline): void {
  const real = self.fetch.bind(self);
  self.fetch = (input, init) => {
    const address = input instanceof Request ? input.url : String(input);
    const name = address.split("/").pop() ?? "";
    const integrity = __PYTHON__.hashes[name];
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
 * Pyodide asks by a call whether its worker is a classic one. A module worker refuses as this does, but
 * here the page's policy would refuse first and write an error into the console at every start.
 */
function refuseClassicScripts(): void {
  self.importScripts = () => {
    throw new TypeError("a module worker has no classic scripts");
  };
}

async function load(kind: StartKind): Promise<Handle> {
  refuseClassicScripts();
  const home = new URL(`../${__PYTHON__.folder}/`, self.location.href).href;
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
    lockFileContents: JSON.stringify({ info: __PYTHON__.lockInfo, packages: {} }),
  };
}

// Starts the pinned Pyodide in Node the way that the build needs it.
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { loadPyodide } from "pyodide";

const home = dirname(fileURLToPath(import.meta.resolve("pyodide")));
const { info } = JSON.parse(readFileSync(join(home, "pyodide-lock.json"), "utf8"));

/** A lock that knows only `packages`. With the stock lock, freezing would list all of its wheels. */
export const lockWith = (packages) => JSON.stringify({ info, packages });

/** Python in this process. Its output ends up in the build's log. */
export function startPython(options) {
  return loadPyodide({
    env: {
      HOME: "/home/pyodide",
      TZ: "UTC",
      LC_ALL: "C.UTF-8",
      PYTHONHASHSEED: "0",
      // Byte code keeps its lines and leaves out their columns, which only a traceback would show.
      PYTHONNODEBUGRANGES: "1",
    },
    _sysExecutable: "/usr/bin/python",
    lockFileContents: lockWith({}),
    ...options,
  });
}

/** A file's bytes in the form that Pyodide takes: it refuses Node's own Buffer. */
export const bytesOf = (path) => new Uint8Array(readFileSync(path));

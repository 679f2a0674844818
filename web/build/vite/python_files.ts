import { readFileSync, readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import type { Plugin } from "vite";
import { digestOf, integrityOf } from "./hashes";

/** What the worker has to know about the Python files: `__PYTHON__`. */
export interface PythonDescription {
  /** Pyodide makes its file names itself, so the folder carries the hash of all of them. */
  folder: string;
  /** Version of Pyodide. */
  pyodide: string;
  /** File name to integrity. */
  hashes: Record<string, string>;
  /** The "info" of Pyodide's own lock file; Pyodide refuses a lock of another build. */
  lockInfo: unknown;
}

const FOLDER_HASH_CHARACTERS = 12;

/** Puts the Python files into the site under fixed names. */
export function pythonFiles(folder: string): { plugin: Plugin; description: PythonDescription } {
  const names = readdirSync(folder).sort();
  const contents = new Map(names.map((name) => [name, readFileSync(join(folder, name))]));
  const hashes = Object.fromEntries(
    [...contents].map(([name, bytes]) => [name, integrityOf(bytes)]),
  );
  const all = digestOf(Object.entries(hashes).map(([name, hash]) => `${name} ${hash}`));
  const lockFile = createRequire(import.meta.url).resolve("pyodide/pyodide-lock.json");
  const lock = JSON.parse(readFileSync(lockFile, "utf8")) as { info: unknown };
  const packageFile = join(dirname(lockFile), "package.json");
  const { version } = JSON.parse(readFileSync(packageFile, "utf8")) as { version: string };
  const description = {
    folder: `py-${all.slice(0, FOLDER_HASH_CHARACTERS)}`,
    pyodide: version,
    hashes,
    lockInfo: lock.info,
  };
  const plugin: Plugin = {
    name: "python-files",
    generateBundle() {
      for (const [name, source] of contents) {
        this.emitFile({ type: "asset", fileName: `${description.folder}/${name}`, source });
      }
    },
  };
  return { plugin, description };
}

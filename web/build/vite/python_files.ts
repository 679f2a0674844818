import { readFileSync, readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import type { Plugin } from "vite";
import { digestOf, digestOfParts } from "./hashes";

/** What the worker has to know about the Python files: `__PYTHON__`. */
export interface PythonDescription {
  /** Pyodide makes its file names itself, so the folder carries the hash of all of them. */
  folder: string;
  /** Version of Pyodide. */
  pyodide: string;
  /** File name to the digest of the digests of its parts. */
  digests: Record<string, string>;
  part_bytes: number;
  /** In base64: two small files that stand in the worker's script instead. */
  imageHead: string;
  emptyZip: string;
  /** The "info" of Pyodide's own lock file; Pyodide refuses a lock of another build. */
  lockInfo: unknown;
}

const IN_SCRIPT = { head: "core.head.bin", zip: "empty.zip" };
const PART_BYTES = 512 * 1024;
const FOLDER_HASH_CHARACTERS = 12;

/** Puts the Python files into the site under fixed names. */
export function pythonFiles(folder: string): { plugin: Plugin; description: PythonDescription } {
  const names = readdirSync(folder)
    .sort()
    .filter((name) => !Object.values(IN_SCRIPT).includes(name));
  const inScript = (name: string): string => readFileSync(join(folder, name)).toString("base64");
  const contents = new Map(names.map((name) => [name, readFileSync(join(folder, name))]));
  const digests = Object.fromEntries(
    [...contents].map(([name, bytes]) => [name, digestOfParts(bytes, PART_BYTES)]),
  );
  const all = digestOf(Object.entries(digests).map(([name, hash]) => `${name} ${hash}`));
  const lockFile = createRequire(import.meta.url).resolve("pyodide/pyodide-lock.json");
  const lock = JSON.parse(readFileSync(lockFile, "utf8")) as { info: unknown };
  const packageFile = join(dirname(lockFile), "package.json");
  const { version } = JSON.parse(readFileSync(packageFile, "utf8")) as { version: string };
  const description = {
    folder: `py-${all.slice(0, FOLDER_HASH_CHARACTERS)}`,
    pyodide: version,
    digests,
    part_bytes: PART_BYTES,
    imageHead: inScript(IN_SCRIPT.head),
    emptyZip: inScript(IN_SCRIPT.zip),
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

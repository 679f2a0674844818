import type { Plugin } from "vite";

/** Pyodide asks for parts of Node.js where it runs in Node.js; in the phone's worker nobody ever does. */
export function nodeOutside(): Plugin {
  return {
    name: "node-outside",
    enforce: "pre",
    resolveId: (id) => (id.startsWith("node:") || id === "ws" ? { id, external: true } : null),
  };
}

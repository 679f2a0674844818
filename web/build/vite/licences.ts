import { readFileSync } from "node:fs";
import type { Plugin } from "vite";

/** Puts the licence texts into the site, where the app shows them without a network. */
export function licences(file: string): Plugin {
  return {
    name: "licences",
    generateBundle() {
      this.emitFile({ type: "asset", fileName: "licences.json", source: readFileSync(file) });
    },
  };
}

// Imported before everything else of a build of the memory image: takes away what differs from one
// Node.js to another and from one run to the next, so that the same sources give the same bytes.

import nodeCrypto from "node:crypto";

// Python keeps the index of a call helper in its memory, and each engine has another index. Pyodide
// makes no helper where it takes the engine for an iPhone's: then the memory holds 0.
Object.defineProperty(globalThis, "navigator", {
  configurable: true,
  value: { userAgent: "iPhone", platform: "iPhone", maxTouchPoints: 5, hardwareConcurrency: 1 },
});
for (const name of ["Suspending", "Suspender", "SuspendError", "promising"]) {
  delete globalThis.WebAssembly[name];
}

// 2024-01-01, a day before any build; the phone's Python asks its own clock.
const STILL_MS = 1_704_067_200_000;
const RealDate = Date;
globalThis.Date = class extends RealDate {
  constructor(...given) {
    super(...(given.length === 0 ? [STILL_MS] : given));
  }
  static now() {
    return STILL_MS;
  }
};
Object.defineProperty(globalThis.performance, "now", { value: () => 0 });
// Pyodide asks Node.js for chance, and a browser's own source where there is no Node.js.
const filled = (into) => {
  new Uint8Array(into.buffer, into.byteOffset, into.byteLength).fill(7);
  return into;
};
Object.defineProperty(globalThis.crypto, "getRandomValues", { value: filled });
nodeCrypto.randomFillSync = filled;
Math.random = () => 0.5;

import { expose } from "comlink";
import type { CoreWorker, Reply } from "./api";
import { startPython } from "./python";

// Begun before the page asks: nothing else is on the way to the first answer.
const starting = startPython(self.name === "plain" ? "plain" : "image");
starting.catch(() => undefined);
let handle: ((text: string) => string) | undefined;

const worker: CoreWorker = {
  async started() {
    handle = await starting;
    return { build: __BUILD_ID__ };
  },
  handle(text) {
    if (handle === undefined) throw new Error("asked before Python had started");
    return JSON.parse(handle(text)) as Reply;
  },
};

expose(worker);

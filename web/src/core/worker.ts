import { expose } from "comlink";
import type { CoreWorker, Reply } from "./api";
import { startPython } from "./python";

const FIRST_QUESTION = JSON.stringify({ v: 1, id: "first", op: "describe", body: {} });
let handle: ((text: string) => string) | undefined;

// Begun before the page asks: nothing else is on the way to the first answer, which is asked for here,
// since the page may be drawing just then and would be waited for twice.
const starting = startPython(self.name === "plain" ? "plain" : "image").then((door) => {
  handle = door;
  return { build: __BUILD_ID__, first: JSON.parse(door(FIRST_QUESTION)) as Reply };
});
starting.catch(() => undefined);

const worker: CoreWorker = {
  started() {
    return starting;
  },
  handle(text) {
    if (handle === undefined) throw new Error("asked before Python had started");
    return JSON.parse(handle(text)) as Reply;
  },
};

expose(worker);

import type { DeskError } from "./messages";

/** What the page may ask of the worker that runs Python. */
export interface CoreWorker {
  /** Resolves when Python answers; rejects with the reason when it cannot start. */
  started(): Promise<Started>;
  /** One request as JSON text to its reply. The worker parses it: megabytes would hold up the page. */
  handle(text: string): Reply;
}

/** With `result` where it is ok, else with `error`. */
export interface Reply {
  readonly id: string;
  readonly ok: boolean;
  readonly result?: unknown;
  readonly error?: DeskError;
}

/** From the memory image that the build made, or plainly, as Pyodide starts by itself. */
export type StartKind = "image" | "plain";

export interface Started {
  /** The build that the worker belongs to. */
  build: string;
  /** Python's first reply: it runs. */
  first: Reply;
}

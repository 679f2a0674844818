/** What the page may ask of the worker that runs Python. */
export interface CoreWorker {
  /** Resolves when Python answers; rejects with the reason when it cannot start. */
  started(): Promise<Started>;
  /** One request as JSON text to one reply as JSON text. */
  handle(text: string): string;
}

/** From the memory image that the build made, or plainly, as Pyodide starts by itself. */
export type StartKind = "image" | "plain";

export interface Started {
  /** The build that the worker belongs to. */
  build: string;
}

// Long work in pieces, so that the page can draw and answer a finger in between.

/** Half a frame: what is drawn beside it keeps up. */
const PIECE_MS = 8;

/** Lets the browser do what waits. No timer: a page in the background would get one a second. */
export function breathe(): Promise<void> {
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage(null);
  });
}

/** What `work` makes of each, in their order. */
export async function inPieces<T, R>(
  list: readonly T[],
  work: (one: T) => R | Promise<R>,
): Promise<R[]> {
  const made: R[] = [];
  let since_ms = performance.now();
  for (const one of list) {
    made.push(await work(one));
    if (performance.now() - since_ms < PIECE_MS) continue;
    await breathe();
    since_ms = performance.now();
  }
  return made;
}

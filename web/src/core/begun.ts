// Python starts while sentences and log are still read from the phone: the first step begins, the screens
// take over.
import { connect, type Connection } from "./connection";

let begun: Connection | undefined;

/** Begins the first start of this page. Call once, before the screens are asked for. */
export function beginCore(): void {
  begun = connect("image");
  // Whoever takes it over hears of it.
  begun.started.catch(() => undefined);
}

/** What was begun, once: whoever starts anew has to begin anew. */
export function takeBegun(): Connection | undefined {
  const mine = begun;
  begun = undefined;
  return mine;
}

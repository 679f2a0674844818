// How this phone leads through a check: one question a page, or all on one screen. A habit of who holds
// the phone, so it is kept here and is no entry.
import { signal, type ReadonlySignal } from "@preact/signals";
import { readNote, writeNote } from "./notes";

export type Mode = "guided" | "compact";

function stored(): Mode {
  return readNote("mode") === "compact" ? "compact" : "guided";
}

const chosen = signal<Mode>(stored());
export const mode: ReadonlySignal<Mode> = chosen;

/** Holds for this visit even where the phone keeps no note. */
export function chooseMode(wanted: Mode): void {
  chosen.value = wanted;
  writeNote("mode", wanted);
}

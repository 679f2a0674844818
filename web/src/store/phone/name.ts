// Names of who uses this phone. The one that was last written in a form stands ready in the next, and may
// be changed there; the one from the settings stands with every entry, and nothing is signed without it.
import { readNote, writeNote } from "./notes";

/** As long as the contract lets the name of an entry be. */
export const MOST_OF_NAME = 40;

const LAST = "name";
const SIGNED = "signed";

function noted(note: string): string {
  const name = readNote(note);
  return typeof name === "string" ? name : "";
}

export const ownName = (): string => noted(LAST) || signature();

export function keepName(name: string): void {
  writeNote(LAST, name);
}

export const signature = (): string => noted(SIGNED);

/** Returns false when it could not be kept. */
export const keepSignature = (name: string): boolean => writeNote(SIGNED, name);

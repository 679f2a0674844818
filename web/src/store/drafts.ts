// Forms under way. Kept in localStorage and not in the session: a phone ends a page in the background,
// and half a walk must still be there afterwards. A draft is never an entry.
import { dropNote, readNote, writeNote } from "./notes";

const noteOf = (name: string): string => `draft.${name}`;

export function readDraft(name: string): unknown {
  return readNote(noteOf(name));
}

/** Returns false when the draft could not be kept; the form itself still holds what was typed. */
export function writeDraft(name: string, value: unknown): boolean {
  return writeNote(noteOf(name), value);
}

export function dropDraft(name: string): void {
  dropNote(noteOf(name));
}

// Forms under way. Kept in localStorage and not in the session: a phone ends a page in the background,
// and half a walk must still be there afterwards. A draft is never an entry.
import { dropNote, followNotes, readNote, writeNote } from "../phone/notes";

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

/** Names every draft that another window of this app has written or dropped. */
export function followDrafts(changed: (name: string) => void): void {
  const first = noteOf("");
  followNotes((note) => {
    if (note.startsWith(first)) changed(note.slice(first.length));
  });
}

// Forms under way. Kept in localStorage and not in the session: a phone ends a page in the background,
// and half a walk must still be there afterwards. A draft is never an entry. Each has a second copy in
// IndexedDB for a browser that is killed before it has written its notes.
import { signal, type ReadonlySignal } from "@preact/signals";
import { dropNote, followNotes, noteNames, readNote, writeNote } from "../phone/notes";
import { copiedDrafts, copyDraft, forgetCopy, type Kept } from "./draftbook";

const noteOf = (name: string): string => `draft.${name}`;
/** As long as a start waits at the most; the copies come in a few milliseconds. */
const MOST_WAIT_MS = 1_000;

const counts = new Map<string, number>();
const followers = new Set<(name: string) => void>();
const answered = signal(false);
/** Whether the copies were looked at: until then no page asks for a draft. */
export const recalled: ReadonlySignal<boolean> = answered;

/** A draft of an older build has no count. */
function noted(name: string): Kept {
  const note = readNote(noteOf(name));
  if (note === null || typeof note !== "object") return { writes: 0, draft: null };
  const { writes = 0, over = false, ...draft } = note as { writes?: number; over?: boolean };
  return { writes, draft: over ? null : draft };
}

function note(name: string, { writes, draft }: Kept): boolean {
  return writeNote(noteOf(name), draft === null ? { writes, over: true } : { ...draft, writes });
}

function nextCount(name: string): number {
  const next = Math.max(counts.get(name) ?? 0, noted(name).writes) + 1;
  counts.set(name, next);
  return next;
}

/** Null where there is none. */
export function readDraft(name: string): unknown {
  const plain = readNote(noteOf(name));
  return plain !== null && typeof plain === "object" ? noted(name).draft : plain;
}

/** Returns false when the draft could not be kept; the form itself still holds what was typed. */
export function writeDraft(name: string, value: object): boolean {
  const kept = { writes: nextCount(name), draft: value };
  const isNoted = note(name, kept);
  if (isNoted) copyDraft(name, kept);
  return isNoted;
}

/** A draft that is one text. An older build kept it bare. */
export function readText(name: string): string | null {
  const draft = readDraft(name);
  if (draft === null || typeof draft !== "object") return typeof draft === "string" ? draft : null;
  const { text } = draft as { text?: unknown };
  return typeof text === "string" ? text : null;
}

export function writeText(name: string, text: string): boolean {
  return writeDraft(name, { text });
}

/** What is over stays noted until the next start, or a copy that was not reached would bring it back. */
export function dropDraft(name: string): void {
  const { writes, draft } = noted(name);
  if (draft === null && writes === 0) {
    dropNote(noteOf(name));
    return;
  }
  const kept = { writes: nextCount(name), draft: null };
  if (!note(name, kept)) dropNote(noteOf(name));
  copyDraft(name, kept);
}

/** Names every draft that another window of this app, or a start, has written or dropped. */
export function followDrafts(changed: (name: string) => void): void {
  followers.add(changed);
  const first = noteOf("");
  followNotes((name) => {
    if (name.startsWith(first)) changed(name.slice(first.length));
  });
}

function recallOne(name: string, copy: Kept): void {
  const now = noted(name);
  // What this page has written since it was loaded is what the person sees.
  if (counts.has(name)) {
    counts.set(name, Math.max(counts.get(name) ?? 0, copy.writes));
    if (now.draft === null) dropDraft(name);
    else writeDraft(name, now.draft);
    return;
  }
  if (copy.writes > now.writes) {
    counts.set(name, copy.writes);
    note(name, copy);
    for (const changed of followers) changed(name);
  } else if (copy.writes === now.writes && copy.draft === null) {
    dropNote(noteOf(name));
    void forgetCopy(name, copy);
  }
}

/** A page that was left in the middle of a write has kept its last keys in the notes alone. */
function copyLater(copies: ReadonlyMap<string, Kept>): void {
  const first = noteOf("");
  for (const name of noteNames(first).map((one) => one.slice(first.length))) {
    const now = noted(name);
    if (now.writes > (copies.get(name)?.writes ?? 0)) copyDraft(name, now);
  }
}

async function recallAll(): Promise<void> {
  const copies = await copiedDrafts();
  for (const [name, copy] of copies) recallOne(name, copy);
  copyLater(copies);
}

let recall: Promise<void> | null = null;

/** At a start: what a killed browser had not written of its notes any more. */
export function recallDrafts(): Promise<void> {
  recall ??= Promise.race([
    recallAll(),
    new Promise<void>((done) => {
      setTimeout(done, MOST_WAIT_MS);
    }),
  ])
    // One copy that cannot be taken up must not keep every page away.
    .catch(() => undefined)
    .then(() => {
      answered.value = true;
    });
  return recall;
}

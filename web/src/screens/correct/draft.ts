// A correction under way: what was typed anew, why, and the entry as it was first sent to the store. It has a
// draft of its own, so that a phone that goes dark loses nothing.
import { signal, type Signal } from "@preact/signals";
import { dropDraft, readDraft, writeDraft } from "../../store/underway/drafts";
import type { AmendContent } from "../../store/log/entry";
import { newId } from "../../store/log/ids";
import { ownName } from "../../store/phone/name";
import type { Texts } from "./content";

export interface Draft {
  readonly id: string;
  readonly texts: Texts;
  /** Unusual numbers that the person has looked at again and kept. */
  readonly kept: readonly string[];
  readonly reason: string;
  /** Why an entry is taken back, as a code; empty: not chosen. */
  readonly why: string;
  readonly by: string;
  readonly prepared: AmendContent | null;
}

const open = new Map<string, Signal<Draft>>();
const nameOf = (entry: string): string => `amend.${entry}`;

function fresh(): Draft {
  return { id: newId(), texts: {}, kept: [], reason: "", why: "", by: ownName(), prepared: null };
}

function isDraft(value: unknown): value is Draft {
  const draft = value as Partial<Draft> | null;
  return (
    typeof draft?.id === "string" &&
    typeof draft.texts === "object" &&
    Array.isArray(draft.kept) &&
    [draft.reason, draft.why, draft.by].every((text) => typeof text === "string")
  );
}

export function draftOf(entry: string): Signal<Draft> {
  const known = open.get(entry);
  if (known !== undefined) return known;
  const kept = readDraft(nameOf(entry));
  const draft = signal<Draft>(isDraft(kept) ? kept : fresh());
  open.set(entry, draft);
  return draft;
}

/** What is changed makes another entry: what was prepared for the store stands for it no longer. */
export function changeDraft(entry: string, change: Partial<Draft>): void {
  const draft = draftOf(entry);
  draft.value = { ...draft.value, prepared: null, ...change };
  writeDraft(nameOf(entry), draft.value);
}

export function endDraft(entry: string): void {
  dropDraft(nameOf(entry));
  draftOf(entry).value = fresh();
}

// A check at a machine on hold: who goes on has seen the tag, and the entry says which one it was.
import { signal, type Signal } from "@preact/signals";
import { dropDraft, readDraft, writeDraft } from "../underway/drafts";
import { dropPrepared } from "../underway/prepared";
import { heldOf } from "../log/machines";

interface Seen {
  readonly entry: string;
  readonly at: number;
}

/** As long as a look: common practice, no source. */
const HOLDS_MS = 4 * 3_600_000;

const open = new Map<string, Signal<Seen | null>>();
const nameOf = (machine: string): string => `despite.${machine}`;

function storedSeen(machine: string): Seen | null {
  const draft = readDraft(nameOf(machine)) as Partial<Seen> | null;
  if (typeof draft?.entry !== "string" || typeof draft.at !== "number") return null;
  return { entry: draft.entry, at: draft.at };
}

function seenAt(machine: string): Signal<Seen | null> {
  const known = open.get(machine) ?? signal(storedSeen(machine));
  open.set(machine, known);
  return known;
}

/** The tag that was seen and is still there; undefined where there is none, or nobody has said so. */
export function despiteOf(machine: string): string | undefined {
  const held = heldOf(machine);
  const seen = seenAt(machine).value;
  if (held === undefined || seen?.entry !== held.id) return undefined;
  return Date.now() - seen.at < HOLDS_MS ? held.id : undefined;
}

/** Whether the tag has to be shown before a check goes on. */
export function isAsked(machine: string): boolean {
  return heldOf(machine) !== undefined && despiteOf(machine) === undefined;
}

export function goOnDespite(machine: string): void {
  const held = heldOf(machine);
  if (held === undefined) return;
  const seen: Seen = { entry: held.id, at: Date.now() };
  writeDraft(nameOf(machine), seen);
  seenAt(machine).value = seen;
  dropPrepared(machine);
}

export function endDespite(machine: string): void {
  dropDraft(nameOf(machine));
  seenAt(machine).value = null;
}

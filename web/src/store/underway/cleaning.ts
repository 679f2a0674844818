// A clean-out under way: kept at every tick and every key, so that it goes on after the phone was off.
// It becomes an entry when it is finished or stopped.
import { signal, type Signal } from "@preact/signals";
import type { CleanOutContent } from "../../core/messages";
import { dropDraft, followDrafts, readDraft, writeDraft } from "./drafts";
import type { Storable } from "../log/entry";
import { newId } from "../log/ids";

export type CleanState = NonNullable<CleanOutContent["steps"]>[number]["state"];

export interface CleanTick {
  readonly state: CleanState;
  readonly at: string;
  /** Left out on purpose; it is no state that was reached. */
  readonly leftOut?: true;
}

export interface Cleaning {
  /** Of the entry that it becomes. */
  readonly id: string;
  readonly ticks: readonly CleanTick[];
  /** What was typed on the way, by its field. */
  readonly texts: Readonly<Record<string, string>>;
  /** When each bucket of the new charge went in. */
  readonly buckets: readonly string[];
  readonly otherWay: boolean;
  /** The entry of a stopped clean-out that the one of this takes the place of. */
  readonly continues: string | null;
  /** Entries as they were first sent to the store, so that a second try writes the same ones. */
  readonly prepared: readonly Storable[] | null;
}

const open = new Map<string, Signal<Cleaning | null>>();
const nameOf = (machine: string): string => `cleaning.${machine}`;

function isCleaning(value: unknown): value is Cleaning {
  if (value === null || typeof value !== "object") return false;
  const { id, ticks, texts, buckets, otherWay } = value as Partial<Cleaning>;
  return (
    typeof id === "string" &&
    Array.isArray(ticks) &&
    typeof texts === "object" &&
    Object.values(texts).every((text) => typeof text === "string") &&
    Array.isArray(buckets) &&
    typeof otherWay === "boolean"
  );
}

function stored(machine: string): Cleaning | null {
  const draft = readDraft(nameOf(machine));
  return isCleaning(draft)
    ? { ...draft, continues: draft.continues ?? null, prepared: draft.prepared ?? null }
    : null;
}

export function cleaningOf(machine: string): Signal<Cleaning | null> {
  const known = open.get(machine);
  if (known !== undefined) return known;
  const cleaning = signal(stored(machine));
  open.set(machine, cleaning);
  return cleaning;
}

/** A tick of another window is a tick of the same clean-out. */
export function followCleanings(): void {
  followDrafts((name) => {
    for (const [machine, cleaning] of open)
      if (name === nameOf(machine)) cleaning.value = stored(machine);
  });
}

/** False when it could not be kept: then nothing has changed. */
function keep(machine: string, cleaning: Cleaning): boolean {
  if (!writeDraft(nameOf(machine), cleaning)) return false;
  cleaningOf(machine).value = cleaning;
  return true;
}

/** `from`: what a clean-out that was stopped had reached. */
export function beginCleaning(machine: string, from: Partial<Cleaning> = {}): boolean {
  const fresh = {
    ...{ ticks: [], texts: {}, buckets: [] },
    ...{ otherWay: false, continues: null, prepared: null },
  };
  return keep(machine, { ...fresh, ...from, id: newId() });
}

export function changeCleaning(machine: string, change: Partial<Cleaning>): boolean {
  const now = cleaningOf(machine).value;
  return now !== null && keep(machine, { ...now, prepared: null, ...change });
}

export function endCleaning(machine: string): void {
  dropDraft(nameOf(machine));
  cleaningOf(machine).value = null;
}

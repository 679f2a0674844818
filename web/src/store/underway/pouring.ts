// A recipe that is being poured: one tick for each state reached, written down at once, so that a dead
// phone loses nothing. A tick that cannot be kept is not shown.
import { signal, type Signal } from "@preact/signals";
import { dropDraft, followDrafts, readDraft, writeDraft } from "./drafts";
import { newId } from "../log/ids";
import type { PlanContent, PourContent } from "../written/deed";

/** A state that was reached: its place among the steps of the recipe, and when. */
export interface Tick {
  readonly step: number;
  readonly at: string;
  /** Told afterwards, not ticked at the bucket. */
  readonly told?: boolean;
  /** Ticked by the same press as the one before. */
  readonly also?: boolean;
}

export interface Pouring {
  /** Of the entry that will say what went in. */
  readonly id: string;
  /** The entry with the recipe. */
  readonly check: string;
  readonly plan: PlanContent;
  readonly ticks: readonly Tick[];
  /** So many steps stand in the log already, from a pour that was broken off for later. */
  readonly logged: number;
  /** One tick for a whole bucket instead of one for each state. */
  readonly quick: boolean;
  /** The entry as it was first sent to the store, so that a second try is the same one. */
  readonly prepared: PourContent | null;
}

const open = new Map<string, Signal<Pouring | null>>();
/** Pours that were begun or taken up since this page was loaded: nobody has to be asked about them. */
const takenUp = signal<ReadonlySet<string>>(new Set());

function isPouring(value: unknown): value is Pouring {
  if (value === null || typeof value !== "object") return false;
  const { id, check, plan, ticks, logged, quick } = value as Partial<Pouring>;
  return (
    [id, check].every((text) => typeof text === "string") &&
    typeof plan === "object" &&
    typeof logged === "number" &&
    typeof quick === "boolean" &&
    Array.isArray(ticks)
  );
}

function stored(machine: string): Pouring | null {
  const draft = readDraft(`pouring.${machine}`);
  return isPouring(draft) ? draft : null;
}

export function pouringOf(machine: string): Signal<Pouring | null> {
  const known = open.get(machine);
  if (known !== undefined) return known;
  const pouring = signal(stored(machine));
  open.set(machine, pouring);
  return pouring;
}

/** A tick of another window is a tick of the same pour. */
export function followPourings(): void {
  followDrafts((name) => {
    for (const [machine, pouring] of open)
      if (name === `pouring.${machine}`) pouring.value = stored(machine);
  });
}

/** False when it could not be kept: then nothing has changed. */
function keep(machine: string, pouring: Pouring): boolean {
  if (!writeDraft(`pouring.${machine}`, pouring)) return false;
  pouringOf(machine).value = pouring;
  return true;
}

export function beginPouring(
  machine: string,
  check: string,
  plan: PlanContent,
  quick: boolean,
): boolean {
  takeUp(machine);
  return keep(machine, {
    id: newId(),
    check,
    plan,
    ticks: [],
    logged: 0,
    quick,
    prepared: null,
  });
}

export function changePouring(machine: string, change: Partial<Pouring>): boolean {
  const now = pouringOf(machine).value;
  if (now === null || !keep(machine, { ...now, prepared: null, ...change })) return false;
  // Who ticks here knows what was poured.
  if (change.ticks !== undefined) takeUp(machine);
  return true;
}

export function endPouring(machine: string): void {
  dropDraft(`pouring.${machine}`);
  pouringOf(machine).value = null;
}

/** Whether the person has to say first what happened since the last tick. */
export function isInterrupted(machine: string): boolean {
  const now = pouringOf(machine).value;
  return now !== null && now.ticks.length > now.logged && !takenUp.value.has(machine);
}

export function takeUp(machine: string): void {
  takenUp.value = new Set([...takenUp.value, machine]);
}

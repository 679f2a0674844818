// What the deeds of a machine say about now: a second reading that is due, the newest strength, and what
// went in since.
import { computed } from "@preact/signals";
import type { BucketRow } from "../../core/messages";
import {
  hasDip,
  hasReading,
  isLookOnly,
  type CheckEntry,
  type DeedEntry,
  type LookEntry,
  type PourEntry,
  type RecheckEntry,
  type ToldEntry,
} from "./entry";
import { recent, recentDeeds, recentDeedsTold } from "./journal";
import { lastCheck, lastCheckWith } from "./machines";

function isOf(machine: string) {
  return (entry: { readonly machine: string }): boolean => entry.machine === machine;
}

function isCleanOut(entry: { readonly kind: string; readonly body: object }): boolean {
  return entry.kind === "clean_out" && "finished" in entry.body && entry.body.finished === true;
}

/**
 * As pycore finds it: the last pour with a due time, until somebody has read after that time, checked anew
 * or cleaned out, or said that nobody will read. Before its time it has hardly mixed, so one more is due.
 */
export function dueRecheck(machine: string): PourEntry | undefined {
  const pours = recentDeeds.value.filter(isOf(machine)).filter((deed) => deed.kind === "pour");
  const last = pours.filter(({ body }) => body.recheck_due_at !== undefined).at(-1);
  if (last === undefined) return undefined;
  const read = [
    ...recent.value.filter((entry) => entry.kind === "check" && "reading" in entry.body),
    ...recent.value.filter(isCleanOut),
    ...recentDeeds.value
      .filter((deed) => deed.kind === "recheck")
      .filter((deed) => deed.body.reading === undefined || !isTooEarly(last, deed.measured_at)),
  ].filter(isOf(machine));
  return read.some(({ place }) => place > last.place) ? undefined : last;
}

/** By check: a page of the log asks for each of its rows. */
const byCheck = computed<ReadonlyMap<string, readonly DeedEntry[]>>(() => {
  const checkOf = new Map<string, string>();
  const found = new Map<string, DeedEntry[]>();
  for (const deed of recentDeedsTold.value) {
    const check =
      deed.kind === "plan"
        ? deed.body.check
        : checkOf.get(deed.kind === "pour" ? deed.body.plan : deed.body.of);
    if (check === undefined) continue;
    checkOf.set(deed.id, check);
    if (deed.kind !== "plan") found.set(check, [...(found.get(check) ?? []), deed]);
  }
  return found;
});

/** What was poured and read again after a check, and what of it was taken back. */
export function deedsAfter(check: string): readonly DeedEntry[] {
  return byCheck.value.get(check) ?? [];
}

/** Whether the recipe of a check was begun and nothing of it poured. */
export function isGivenUp(check: string): boolean {
  const plans = recentDeeds.value
    .filter((deed) => deed.kind === "plan")
    .filter(({ body }) => body.check === check)
    .map(({ id }) => id);
  const pours = recentDeeds.value
    .filter((deed) => deed.kind === "pour")
    .filter(({ body }) => plans.includes(body.plan));
  // A part that was poured before the rest was given up is in the sump.
  return (
    pours.some(({ body }) => body.finished) &&
    pours.every(({ body }) => body.pours.length === 0 && body.draw_off === undefined)
  );
}

/** Whether a second reading came before the pump could mix what was poured. */
export function isTooEarly({ body }: PourEntry, at: string): boolean {
  const { recheck_due_at: due } = body;
  return due !== undefined && Date.parse(at) < Date.parse(due);
}

/** The newest of checks and second readings, for the machine's state. */
export function lastMeasured(machine: string): CheckEntry | RecheckEntry | undefined {
  const check = lastCheck(machine);
  const emptied = recent.value.filter(isOf(machine)).filter(isCleanOut).at(-1)?.place ?? -1;
  const again = recentDeeds.value
    .filter(isOf(machine))
    .filter((deed) => deed.kind === "recheck")
    .filter(({ place }) => place > emptied)
    .filter(({ body }) => body.reading !== undefined)
    .at(-1);
  if (check === undefined || again === undefined) return again ?? check;
  return again.place > check.place ? again : check;
}

/** Dip or reading of last time, before or after a pour, whichever was later. */
function latest<T>(
  machine: string,
  check: CheckEntry | undefined,
  found: (body: CheckEntry["body"] | RecheckEntry["body"]) => T | undefined,
): { readonly typed: T; readonly entry: CheckEntry | RecheckEntry } | undefined {
  const again = recentDeeds.value
    .filter(isOf(machine))
    .filter((deed) => deed.kind === "recheck")
    .filter(({ body }) => found(body) !== undefined)
    .at(-1);
  const entry = again !== undefined && again.place > (check?.place ?? -1) ? again : check;
  const typed = entry && found(entry.body);
  return entry === undefined || typed === undefined ? undefined : { typed, entry };
}

export const lastDip = (machine: string) =>
  latest(machine, lastCheckWith(machine, hasDip), (body) => ("dip" in body ? body.dip : undefined));

export const lastReading = (machine: string) =>
  latest(machine, lastCheckWith(machine, hasReading), (body) =>
    "reading" in body ? body.reading : undefined,
  );

/** Buckets that went in after an entry, ticked or told, and what somebody poured without a record. */
export interface PouredAfter {
  readonly rows: readonly BucketRow[];
  /** Nobody knows how much it was. */
  readonly hasUnknown: boolean;
  readonly last: PourEntry | ToldEntry;
}

/** Null where nothing went in. A recipe that was given up before the first bucket poured nothing. */
export function pouredAfter(machine: string, place: number): PouredAfter | null {
  const isLater = (entry: { readonly machine: string; readonly place: number }): boolean =>
    entry.machine === machine && entry.place > place;
  const told = recent.value.filter(isLater);
  const unknown = told.filter((entry) => entry.kind === "unknown_addition");
  const pours = [
    ...recentDeeds.value.filter(isLater).filter((deed) => deed.kind === "pour"),
    ...told.filter((entry) => entry.kind === "pour"),
  ].filter(({ body }) => body.pours.length > 0);
  const last = [...pours, ...unknown].sort((a, b) => a.place - b.place).at(-1);
  if (last === undefined) return null;
  return {
    rows: pours.flatMap(({ body }): readonly BucketRow[] => body.pours),
    hasUnknown: unknown.length > 0,
    last,
  };
}

/** The last look that ended in stopping, until somebody has checked the machine again. */
export function refusedLook(machine: string): LookEntry | undefined {
  const checks = recent.value.filter(isOf(machine)).filter((entry) => entry.kind === "check");
  const last = checks.at(-1);
  return last !== undefined && isLookOnly(last) ? last : undefined;
}

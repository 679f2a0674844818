// What the deeds of a machine say about now: the newest strength, and what went in since.
import { computed } from "@preact/signals";
import type { BucketRow, Typed } from "../../core/messages";
import type { AnyPour } from "./dueparts";
import {
  hasDip,
  hasReading,
  isLookOnly,
  type CheckEntry,
  type DeedEntry,
  type LookEntry,
  type RecheckEntry,
  type ToldEntry,
} from "./entry";
import { recent, recentDeeds, recentDeedsTold } from "./journal";
import { isInDoubt } from "./lines";
import { lastCheck, lastCheckWith } from "./machines";
import { emptiedAt, poursOf } from "./mixing";

function isOf(machine: string) {
  return (entry: { readonly machine: string }): boolean => entry.machine === machine;
}

/** By check: a page of the log asks for each row. Another phone's clock may put a pour before its plan. */
const byCheck = computed<ReadonlyMap<string, readonly DeedEntry[]>>(() => {
  const deeds = recentDeedsTold.value;
  const checkOf = new Map<string, string>();
  for (const deed of deeds) if (deed.kind === "plan") checkOf.set(deed.id, deed.body.check);
  const note = (id: string, of: string): void => {
    const check = checkOf.get(of);
    if (check !== undefined) checkOf.set(id, check);
  };
  for (const deed of deeds) if (deed.kind === "pour") note(deed.id, deed.body.plan);
  for (const deed of deeds) if (deed.kind === "recheck") note(deed.id, deed.body.of);
  const found = new Map<string, DeedEntry[]>();
  for (const deed of deeds) {
    const check = checkOf.get(deed.id);
    if (check !== undefined && deed.kind !== "plan")
      found.set(check, [...(found.get(check) ?? []), deed]);
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

type Reread = RecheckEntry & {
  readonly body: { readonly reading: NonNullable<RecheckEntry["body"]["reading"]> };
};

/** The last second reading of this charge. */
export function lastReread(machine: string): Reread | undefined {
  const emptied = emptiedAt(machine);
  return recentDeeds.value
    .filter(isOf(machine))
    .filter((deed) => deed.kind === "recheck")
    .filter(({ place }) => place > emptied)
    .filter((deed): deed is Reread => deed.body.reading !== undefined)
    .at(-1);
}

/** The newest of checks and second readings, for the machine's state. */
export function lastMeasured(machine: string): CheckEntry | RecheckEntry | undefined {
  const check = lastCheck(machine);
  const again = lastReread(machine);
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
  readonly draw_offs: readonly Typed[];
  /** Nobody knows how much it was. */
  readonly hasUnknown: boolean;
  readonly last: AnyPour | ToldEntry;
}

/**
 * Null where nothing went in, up to a time where it is given. A recipe that was given up before the first
 * bucket poured nothing.
 */
export function pouredAfter(
  machine: string,
  place: number,
  until_ms = Infinity,
): PouredAfter | null {
  const later = poursOf(machine)
    .filter((pour) => pour.place > place)
    .filter(({ measured_at }) => Date.parse(measured_at) <= until_ms);
  const pours = later.filter(({ body }) => body.pours.length > 0);
  const unknown = recent.value
    .filter((entry) => entry.kind === "unknown_addition")
    .filter((entry) => entry.machine === machine && entry.place > place);
  const last = [...pours, ...unknown].sort((a, b) => a.place - b.place).at(-1);
  if (last === undefined) return null;
  const known = later.filter((pour) => !isInDoubt(pour));
  return {
    rows: known.flatMap(({ body }): readonly BucketRow[] => body.pours),
    draw_offs: known.flatMap(({ body: { draw_off: out } }) => (out === undefined ? [] : [out])),
    hasUnknown: unknown.length > 0 || pours.some(isInDoubt),
    last,
  };
}

/** The last look that ended in stopping, until somebody has checked the machine again. */
export function refusedLook(machine: string): LookEntry | undefined {
  const checks = recent.value.filter(isOf(machine)).filter((entry) => entry.kind === "check");
  const last = checks.at(-1);
  return last !== undefined && isLookOnly(last) ? last : undefined;
}

// Which of several entries is the latest, as pycore's journal has it.
import type { AnyEntry } from "./entry";
import { inText } from "./lines";

/** Between clocks of two phones; as pycore has it. */
const CERTAIN_MS = 10 * 60_000;

type Timed = Pick<AnyEntry, "log" | "strand" | "earlier" | "seq" | "measured_at" | "wall">;

/** Whether an entry is certainly earlier than another one. */
function isBefore(one: Timed, other: Timed): boolean {
  if (one.strand === other.strand) return one.seq < other.seq;
  if (other.earlier.includes(one.strand)) return true;
  if (one.earlier.includes(other.strand)) return false;
  return Date.parse(other.measured_at) - Date.parse(one.measured_at) > CERTAIN_MS;
}

/** In order, the last of each log, and of each strand of one that split and has none after it. */
function lastsOf<T extends Timed>(ordered: readonly T[]): readonly T[] {
  const lasts = new Map(ordered.map((entry) => [entry.strand, entry]));
  const before = new Set([...lasts.values()].flatMap(({ earlier }) => earlier));
  return [...lasts.values()].filter(({ strand }) => !before.has(strand));
}

const atOf = ({ measured_at }: Timed): number => Math.floor(Date.parse(measured_at) / 1000) * 1000;

/**
 * The latest of entries in order, as pycore has it: of the last of each log the one with the latest time. One
 * wrong clock puts all that its log tells afterwards behind the others; it makes none of it later.
 */
export function latestOf<T extends Timed>(ordered: readonly T[]): T | undefined {
  const rank = (a: T, b: T): number =>
    atOf(b) - atOf(a) || inText(a.log, b.log) || a.seq - b.seq || inText(a.strand, b.strand);
  return [...lastsOf(ordered)].sort(rank)[0];
}

/** By a clock that is ahead of this one: when it was written nobody knows. */
const isAhead = ({ wall }: Timed): boolean => Date.parse(wall) - Date.now() > CERTAIN_MS;

/**
 * Of entries in order the latest of each log that no other one is certainly later than, and before them
 * those in doubt that are not certainly earlier.
 */
export function mayBeLatest<T extends Timed>(
  ordered: readonly T[],
  inDoubt: readonly T[],
): readonly T[] {
  const last = latestOf(ordered);
  if (last === undefined) return inDoubt;
  const open = inDoubt.filter((entry) => !isBefore(entry, last));
  const found = lastsOf(ordered).filter(
    (entry) => isAhead(last) || isAhead(entry) || atOf(last) - atOf(entry) <= CERTAIN_MS,
  );
  return [...open, ...found];
}

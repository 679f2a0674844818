// Which of several entries is the latest, as pycore's journal has it.
import type { AnyEntry } from "./entry";
import { inText } from "./lines";

/** Between clocks of two phones; as pycore has it. */
export const CERTAIN_MS = 10 * 60_000;

type Timed = Pick<AnyEntry, "log" | "strand" | "seq" | "measured_at">;

/** Whether an entry is certainly earlier than another one. */
function isBefore(one: Timed, other: Timed): boolean {
  if (one.strand === other.strand) return one.seq < other.seq;
  return Date.parse(other.measured_at) - Date.parse(one.measured_at) > CERTAIN_MS;
}

/** In order, the last of each log, and of each strand of one that split. */
function lastsOf<T extends Timed>(ordered: readonly T[]): readonly T[] {
  return [...new Map(ordered.map((entry) => [entry.strand, entry])).values()];
}

/**
 * The latest of entries in order, as pycore has it: of the last of each log the one with the latest time. One
 * wrong clock puts all that its log tells afterwards behind the others; it makes none of it later.
 */
export function latestOf<T extends Timed>(ordered: readonly T[]): T | undefined {
  const at_s = ({ measured_at }: T): number => Math.floor(Date.parse(measured_at) / 1000);
  const rank = (a: T, b: T): number => at_s(b) - at_s(a) || inText(a.log, b.log);
  return [...lastsOf(ordered)].sort(rank)[0];
}

/**
 * Of entries in order the latest of each log that no other one is certainly later than, and before them
 * those in doubt that are not certainly earlier.
 */
export function mayBeLatest<T extends Timed>(
  ordered: readonly T[],
  inDoubt: readonly T[],
): readonly T[] {
  const lasts = lastsOf(ordered);
  const at = (entry: T): number => Date.parse(entry.measured_at);
  const newest = Math.max(...lasts.map(at));
  const found = lasts.filter((entry) => newest - at(entry) <= CERTAIN_MS);
  const last = found.at(-1);
  const open = inDoubt.filter((entry) => last === undefined || !isBefore(entry, last));
  return [...open, ...found];
}

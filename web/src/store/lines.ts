// Stored lines as the screens need them: which can be used, and in which order.
import { entryFrom, isTombstone, parsedLine, type AnyEntry, type Unplaced } from "./entry";
import type { StoredLine } from "./ledger";
import { hashOfLine } from "./line";

export interface Line extends StoredLine {
  readonly hash: string;
  readonly log: string;
  /** 0 where it cannot be read. */
  readonly seq: number;
  readonly id: string;
  /** Empty for an entry about the whole shop. */
  readonly machine: string;
  /** The entry that this one corrects or withdraws; empty for most. */
  readonly amends: string;
  readonly wall: string;
  /** Null for what this build cannot show. */
  readonly entry: Unplaced | null;
  /** Its content was taken out: what is left keeps the place and the hash of the line. */
  readonly isRemoved: boolean;
  /** The latest time in its log up to here, where the lines before it were not all read. */
  readonly reached?: number;
}

const textOf = (value: unknown): string => (typeof value === "string" ? value : "");

export async function lineOf(stored: StoredLine): Promise<Line> {
  const hash = await hashOfLine(stored.text);
  const bare = {
    ...stored,
    hash,
    log: "",
    seq: 0,
    id: "",
    machine: "",
    amends: "",
    wall: "",
    entry: null,
    isRemoved: false,
  };
  if (!stored.whole) return bare;
  // Parsed once: a log of years is tens of megabytes.
  const line = parsedLine(stored.text);
  const fields = line ?? {};
  const body = (fields["body"] ?? {}) as Readonly<Record<string, unknown>>;
  return {
    ...bare,
    log: textOf(fields["log"]),
    seq: typeof fields["seq"] === "number" ? fields["seq"] : 0,
    id: textOf(fields["id"]),
    machine: textOf(fields["machine"]),
    amends: textOf(body["corrects"] ?? body["retracts"]),
    wall: textOf(fields["wall"]),
    entry: entryFrom(line),
    isRemoved: isTombstone(line),
  };
}

/** Names that different lines claim: their number in a log, or their id. */
function claimedTwice(lines: readonly Line[]): ReadonlySet<string> {
  const first = new Map<string, string>();
  const twice = new Set<string>();
  for (const { log, seq, id, hash } of lines) {
    for (const name of [`${log} ${seq}`, id]) {
      const known = first.get(name);
      if (known === undefined) first.set(name, hash);
      else if (known !== hash) twice.add(name);
    }
  }
  return twice;
}

/** An entry in its place, the line it stands in, and the latest time in its log up to here. */
export interface Placed {
  readonly entry: AnyEntry;
  readonly line: Line;
  readonly reached: number;
}

export interface Sorted {
  readonly placed: readonly Placed[];
  /** Not used: two lines claim one place, or another line corrects or withdraws them. */
  readonly apart: number;
  /** Whole, but of a kind or version that this build cannot show. */
  readonly unreadable: number;
  readonly removed: number;
  readonly quarantined: number;
}

interface Keyed {
  readonly entry: Unplaced;
  readonly line: Line;
  readonly reached: number;
}

/** Never against the numbers of a log; between logs by the confirmed time, as pycore orders them. */
function inOrder(list: readonly Omit<Keyed, "reached">[]): readonly Placed[] {
  const latest = new Map<string, number>();
  const keyed: Keyed[] = [...list]
    .sort((a, b) => a.entry.seq - b.entry.seq)
    .map(({ entry, line }) => {
      const own = line.reached ?? Date.parse(entry.measured_at);
      const reached = Math.max(latest.get(entry.log) ?? 0, own);
      latest.set(entry.log, reached);
      return { entry, line, reached };
    });
  const compare = (a: Keyed, b: Keyed): number =>
    a.reached - b.reached ||
    (a.entry.log < b.entry.log ? -1 : a.entry.log > b.entry.log ? 1 : a.entry.seq - b.entry.seq);
  return keyed
    .sort(compare)
    .map(({ entry, ...rest }, place) => ({ entry: { ...entry, place }, ...rest }));
}

export function sortLines(all: readonly Line[]): Sorted {
  // No copy brings back what was removed.
  const removed = all.filter(({ isRemoved }) => isRemoved);
  const once = new Map([...all, ...removed].map((line) => [line.hash, line]));
  const whole = [...once.values()].filter((line) => line.whole);
  const twice = claimedTwice(whole);
  const amended = new Set(whole.map(({ amends }) => amends).filter(Boolean));
  const isApart = ({ log, seq, id }: Line): boolean =>
    twice.has(`${log} ${seq}`) || twice.has(id) || amended.has(id);
  const used = whole.filter((line) => !isApart(line));
  const shown = used.flatMap((line) => (line.entry === null ? [] : [{ entry: line.entry, line }]));
  return {
    placed: inOrder(shown),
    apart: whole.length - used.length,
    unreadable: used.filter(({ entry, isRemoved }) => entry === null && !isRemoved).length,
    removed: whole.filter(({ isRemoved }) => isRemoved).length,
    quarantined: all.filter((line) => !line.whole).length,
  };
}

/** Between clocks of two phones; as pycore has it. */
const CERTAIN_MS = 10 * 60_000;

/** Of entries in order the latest of each log that no other one is certainly later than. */
export function mayBeLatest<T extends { readonly log: string; readonly measured_at: string }>(
  ordered: readonly T[],
): readonly T[] {
  const lasts = [...new Map(ordered.map((entry) => [entry.log, entry])).values()];
  const at = (entry: T): number => Date.parse(entry.measured_at);
  const newest = Math.max(...lasts.map(at));
  return lasts.filter((entry) => newest - at(entry) <= CERTAIN_MS);
}

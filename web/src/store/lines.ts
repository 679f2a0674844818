// Stored lines as the screens need them: which can be used, and in which order.
import type { Taken } from "./database";
import { entryFrom, parsedLine, type AnyEntry, type Unplaced } from "./entry";
import { hashOfLine } from "./line";

export interface Line extends Taken {
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
}

const textOf = (value: unknown): string => (typeof value === "string" ? value : "");

export async function lineOf(stored: Taken): Promise<Line> {
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

export interface Sorted {
  readonly entries: readonly AnyEntry[];
  /** Not used: two lines claim one place, or another line corrects or withdraws them. */
  readonly apart: number;
  /** Whole, but of a kind or version that this build cannot show. */
  readonly unreadable: number;
  readonly quarantined: number;
}

interface Keyed {
  readonly entry: Unplaced;
  readonly reached: number;
}

/** Never against the numbers of a log; between logs by the confirmed time, as pycore orders them. */
function inOrder(list: readonly Unplaced[]): readonly AnyEntry[] {
  const reached = new Map<string, number>();
  const keyed: Keyed[] = [...list]
    .sort((a, b) => a.seq - b.seq)
    .map((entry) => {
      const time = Math.max(reached.get(entry.log) ?? 0, Date.parse(entry.measured_at));
      reached.set(entry.log, time);
      return { entry, reached: time };
    });
  const compare = (a: Keyed, b: Keyed): number =>
    a.reached - b.reached ||
    (a.entry.log < b.entry.log ? -1 : a.entry.log > b.entry.log ? 1 : a.entry.seq - b.entry.seq);
  return keyed.sort(compare).map(({ entry }, place) => ({ ...entry, place }));
}

export function sortLines(all: readonly Line[]): Sorted {
  const whole = [...new Map(all.map((line) => [line.hash, line])).values()].filter(
    (line) => line.whole,
  );
  const twice = claimedTwice(whole);
  const amended = new Set(whole.map(({ amends }) => amends).filter(Boolean));
  const isApart = ({ log, seq, id }: Line): boolean =>
    twice.has(`${log} ${seq}`) || twice.has(id) || amended.has(id);
  const used = whole.filter((line) => !isApart(line));
  const shown = used.flatMap(({ entry }) => (entry === null ? [] : [entry]));
  return {
    entries: inOrder(shown),
    apart: whole.length - used.length,
    unreadable: used.length - shown.length,
    quarantined: all.filter((line) => !line.whole).length,
  };
}

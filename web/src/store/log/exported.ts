// Which of this phone's entries have left it in a backup. The phone cannot know what became of the file.
import { signal } from "@preact/signals";
import type { Line } from "./lines";
import { readNote, writeNote } from "../phone/notes";

const NAME = "exported";

interface Exported {
  readonly at: string;
  /** The last number of each log that was in a file. */
  readonly last: Readonly<Record<string, number>>;
}

export interface Unexported {
  readonly count: number;
  /** When the oldest of them was written; empty where there is none. */
  readonly oldest: string;
  /** When a backup was last saved; empty where none was. */
  readonly lastAt: string;
}

/** The backup of this visit: what was counted before it is counted anew. */
const own = signal<Exported | null>(null);

function storedNote(): Exported {
  const note = readNote(NAME) as { readonly at?: unknown; readonly last?: unknown } | null;
  const { at, last } = note ?? {};
  const isWhole = typeof at === "string" && typeof last === "object" && last !== null;
  return isWhole ? { at, last: last as Exported["last"] } : { at: "", last: {} };
}

function lastNumbers(lines: readonly Line[]): Readonly<Record<string, number>> {
  const last = new Map<string, number>();
  for (const { log, seq, mine } of lines)
    if (mine) last.set(log, Math.max(seq, last.get(log) ?? 0));
  return Object.fromEntries(last);
}

/** Another window may have saved a later one, and not every phone keeps the note. */
function readExported(): Exported {
  const stored = storedNote();
  const mine = own.value;
  if (mine === null || Date.parse(stored.at) > Date.parse(mine.at)) return stored;
  return mine;
}

export function noteExported(lines: readonly Line[], at: string): void {
  own.value = { at, last: lastNumbers(lines) };
  writeNote(NAME, own.value);
}

interface Open {
  readonly count: number;
  readonly oldest: string;
}

/** What was counted once, among the lines that a checkpoint stands for. */
export interface Counted extends Open {
  /** The numbers of the last backup, as they were noted then. */
  readonly note: string;
  /** The last number of each of this phone's logs. */
  readonly last: Readonly<Record<string, number>>;
}

/** Entries that came from another phone do not count: that phone has them. */
function openOf(lines: readonly Line[], last: Exported["last"]): Open {
  const open = lines.filter(({ mine, log, seq }) => mine && seq > (last[log] ?? 0));
  const times = open.map(({ wall }) => Date.parse(wall)).filter((time) => !Number.isNaN(time));
  const oldest = times.reduce((first, time) => Math.min(first, time), Infinity);
  const oldestAt = open.find(({ wall }) => Date.parse(wall) === oldest)?.wall ?? "";
  return { count: open.length, oldest: oldestAt };
}

/** Null where a backup since then left out some of them: only the lines themselves can tell. */
export function stillOpen(counted: Counted): Open | null {
  const { last } = readExported();
  if (JSON.stringify(last) === counted.note) return counted;
  const isAllOut = Object.entries(counted.last).every(([log, seq]) => seq <= (last[log] ?? 0));
  return isAllOut ? { count: 0, oldest: "" } : null;
}

function both(one: Open, other: Open): Open {
  const oldest = [one, other]
    .filter(({ count }) => count > 0)
    .map((open) => open.oldest)
    .sort((a, b) => Date.parse(a) - Date.parse(b));
  return { count: one.count + other.count, oldest: oldest[0] ?? "" };
}

const NONE: Open = { count: 0, oldest: "" };

/** `added` are the lines that `before` does not stand for. */
export function countedOf(added: readonly Line[], before: Counted | null): Counted {
  const { last } = readExported();
  const known = before === null ? NONE : stillOpen(before);
  return {
    ...both(known ?? NONE, openOf(added, last)),
    // A note that no backup writes: at the next start every line is looked at.
    note: known === null ? "" : JSON.stringify(last),
    last: { ...before?.last, ...lastNumbers(added) },
  };
}

/** Null while it has to be counted from all lines. */
export function unexported(added: readonly Line[], before: Counted | null): Unexported | null {
  const { at, last } = readExported();
  const known = before === null ? NONE : stillOpen(before);
  return known === null ? null : { ...both(known, openOf(added, last)), lastAt: at };
}

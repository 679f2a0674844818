// Which of this phone's entries have left it in a backup. The phone cannot know what became of the file.
import type { Line } from "./lines";
import { readNote, writeNote } from "./notes";

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

function readExported(): Exported {
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

export function noteExported(lines: readonly Line[], at: string): void {
  writeNote(NAME, { at, last: lastNumbers(lines) } satisfies Exported);
}

/** Entries that came from another phone do not count: that phone has them. */
export function unexported(lines: readonly Line[]): Unexported {
  const { at, last } = readExported();
  const open = lines.filter(({ mine, log, seq }) => mine && seq > (last[log] ?? 0));
  const times = open.map(({ wall }) => Date.parse(wall)).filter((time) => !Number.isNaN(time));
  const oldest = times.reduce((first, time) => Math.min(first, time), Infinity);
  const oldestAt = open.find(({ wall }) => Date.parse(wall) === oldest)?.wall ?? "";
  return { count: open.length, oldest: oldestAt, lastAt: at };
}

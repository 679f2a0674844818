// Whether everything that was written here is still here.
import { closeLog, type Ledger } from "./ledger";
import type { Line } from "./lines";
import { dropWitness, noteLacking, readLacking, type Head } from "./witness";

/** `found`: how many of a log's `count` lines are here. Equal numbers: its end is another line. */
export interface Lack extends Head {
  readonly found: number;
}

function foundOf({ log, count }: Head, lines: readonly Line[]): number {
  const numbers = new Set(lines.filter((line) => line.log === log).map(({ seq }) => seq));
  return [...numbers].filter((seq) => seq <= count).length;
}

function hasEnd(lines: readonly Line[], { log, count, head }: Head): boolean {
  return lines.some((line) => line.log === log && line.seq === count && line.hash === head);
}

/** What is still missing; a backup that was taken in can have brought it back. */
function lacksOf(heads: readonly Head[], lines: readonly Line[]): readonly Lack[] {
  return heads
    .map((head) => ({ ...head, found: foundOf(head, lines) }))
    .filter((lack) => lack.found < lack.count || !hasEnd(lines, lack));
}

/**
 * True where the log was closed, so that it has to be read again. The witness must have been read
 * before the ledger: another window may store an entry in between.
 */
export async function closeIfShort(
  witness: Head | null,
  ledger: Ledger,
  lines: readonly Line[],
): Promise<boolean> {
  if (witness === null || lacksOf([witness], lines).length === 0) return false;
  noteLacking(witness);
  if (witness.log === ledger.ends.log) await closeLog(ledger.ends.log);
  dropWitness();
  return true;
}

/** True where lines of this phone's own log came from elsewhere: somebody else may be writing in it. */
export async function closeIfElsewhere(ledger: Ledger, lines: readonly Line[]): Promise<boolean> {
  if (!lines.some(({ mine, log }) => !mine && log === ledger.ends.log)) return false;
  await closeLog(ledger.ends.log);
  dropWitness();
  return true;
}

export function lackingNow(lines: readonly Line[]): readonly Lack[] {
  return lacksOf(readLacking(), lines);
}

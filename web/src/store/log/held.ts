// What this page holds of the log: every line, or the part that a checkpoint leads to and what was added
// since. Where the stores do not end exactly as they did, every line is read again.
import { givenBy, isPlain, readCheckpoint, type Checkpoint } from "./checkpoint";
import type { Row } from "./entry";
import { stillOpen } from "./exported";
import { closeIfElsewhere, closeIfShort } from "./lacking";
import { hashOfLine } from "./line";
import { readLedger, readSince, type At, type Ends, type Ledger } from "./ledger";
import { lineOf, type Line } from "./lines";
import { inPieces } from "./pieces";
import { readLacking, readWitness, type Head } from "./witness";

export interface Held {
  readonly reach: Checkpoint["reach"];
  readonly lines: readonly Line[];
  /** Null where `lines` are all there are. */
  readonly base: Checkpoint | null;
}

export type Need = "part" | "whole";

async function reachOf({ last, ...ends }: Ends): Promise<Checkpoint["reach"]> {
  return { ...ends, head: last === "" ? "" : await hashOfLine(last) };
}

async function readLines(): Promise<readonly [Ledger, readonly Line[]]> {
  const ledger = await readLedger();
  return [ledger, await inPieces(ledger.lines, lineOf)];
}

/** Reads every line, and closes the log where its end is missing or elsewhere. */
async function readAll(witness: Head | null): Promise<Held> {
  let [ledger, lines] = await readLines();
  const isShort = await closeIfShort(witness, ledger, lines);
  if (isShort || (await closeIfElsewhere(ledger, lines))) [ledger, lines] = await readLines();
  return { reach: await reachOf(ledger.ends), lines, base: null };
}

async function isEnd(row: Row | undefined, seq: number, head: string): Promise<boolean> {
  if (seq === 0) return true;
  return row !== undefined && (await hashOfLine(row.text)) === head;
}

/** Nothing but the own log has grown. */
function isGrown(now: Ends, before: Checkpoint["reach"], after: number): boolean {
  return (
    now.log === before.log &&
    now.count === before.count + after &&
    now.taken === before.taken &&
    now.lastTaken === before.lastTaken &&
    now.heads === before.heads
  );
}

/** What a part may be made of: what this build can show, or what says something of it. */
function isKnown({ entry, amendment, decision }: Line): boolean {
  return entry !== null || amendment !== null || decision !== null;
}

type From = Pick<Held, "reach" | "base"> & { readonly hot: Checkpoint["hot"] };

/** The lines at `hot` and those after `reach`; null where the stores say that more has changed. */
async function readOn(
  { reach, base, hot }: From,
  witness: Head | null,
): Promise<(Held & { readonly isSame: boolean }) | null> {
  if (witness !== null && witness.log !== reach.log) return null;
  if (base !== null && (stillOpen(base.open) === null || readLacking().length > 0)) return null;
  const seen = witness?.count ?? 0;
  const since = await readSince(reach.count, [reach.count, seen], hot);
  const { ends, rows, after, lines } = since;
  const isWhole =
    isGrown(ends, reach, after.length) &&
    lines.length === hot.length &&
    (await isEnd(rows[0], reach.count, reach.head)) &&
    (await isEnd(rows[1], seen, witness?.head ?? ""));
  if (!isWhole) return null;
  const placeOf = ({ own, key }: At): string => `${own} ${key}`;
  const given = new Map(hot.map((at) => [placeOf(at), givenBy(at)]));
  const found = await Promise.all(
    lines.map(async (stored) => ({
      ...(await lineOf(stored)),
      reached: { used: 0, told: 0 },
      ...given.get(placeOf(stored)),
    })),
  );
  const added = await Promise.all(after.map(lineOf));
  if (!found.every(isKnown)) return null;
  if (base !== null && !added.every((line) => isPlain(line, base))) return null;
  const isSame = added.length === 0;
  return { reach: await reachOf(ends), lines: [...found, ...added], base, isSame };
}

async function openPart(witness: Head | null): Promise<Held | null> {
  const base = await readCheckpoint();
  return base === null ? null : readOn({ reach: base.reach, base, hot: base.hot }, witness);
}

/** `known` is what the page holds already: where it only has to be continued, only that is read. */
export async function readHeld(known: Held | null, need: Need): Promise<Held> {
  // Before the rows: another window may store an entry in between.
  const witness = readWitness();
  if (known === null || (need === "whole" && known.base !== null)) {
    const part = need === "part" ? await openPart(witness) : null;
    return part ?? readAll(witness);
  }
  const more = await readOn({ ...known, hot: [] }, witness);
  if (more === null) return readAll(witness);
  return more.isSame ? known : { ...more, lines: [...known.lines, ...more.lines] };
}

/** With a line that was just stored; null where it does not simply follow. */
export function withLine(held: Held, line: Line): Held | null {
  const { reach, base, lines } = held;
  const follows = line.log === reach.log && line.key === reach.count + 1;
  if (!follows || (base !== null && !isPlain(line, base))) return null;
  const next = { ...reach, count: line.key, head: line.hash };
  return { reach: next, base, lines: [...lines, line] };
}

/** Numbers that are missing in the own log are looked at anew at every start, and so is an alarm. */
export function isSound({ lines, reach }: Held): boolean {
  const last = lines.reduce((most, { own, key }) => (own ? Math.max(most, key) : most), 0);
  return last === reach.count && readLacking().length === 0;
}

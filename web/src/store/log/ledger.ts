// All that is stored: the phone's own log, and lines that came from elsewhere.
import type { IDBPTransaction } from "idb";
import { withDatabase, type Shape, type Taken } from "./database";
import type { Row } from "./entry";
import { newId } from "./ids";
import { isHead, type Head } from "./witness";

/** Where a line lies: its number in the own log, or the key under which it was taken in. */
export interface At {
  readonly own: boolean;
  readonly key: number;
}

export interface StoredLine extends Taken, At {}

/** The stores' ends. Lines are only added, so equal ends mean that nothing was added since. */
export interface Ends {
  readonly log: string;
  /** The own log's lines, and the last of them; empty where there is none. */
  readonly count: number;
  readonly last: string;
  readonly taken: number;
  readonly lastTaken: number;
  /** Ends of logs that files told of, as they are stored. */
  readonly heads: string;
}

export interface Ledger {
  readonly ends: Ends;
  readonly lines: readonly StoredLine[];
}

/** Ends of logs that files told of; what they promise may be missing here. */
export function headsOf({ heads }: Pick<Ends, "heads">): readonly Head[] {
  const found: unknown = heads === "" ? [] : JSON.parse(heads);
  return Array.isArray(found) ? found.filter(isHead) : [];
}

export function ownLine({ seq, text }: Row): StoredLine {
  return { text, mine: true, whole: true, own: true, key: seq };
}

function takenLine(line: Taken, key: number): StoredLine {
  return { ...line, own: false, key };
}

type Reading = IDBPTransaction<Shape, ("entries" | "taken" | "about")[]>;

async function endsIn(tx: Reading): Promise<Ends> {
  const [entries, taken, about] = [
    tx.objectStore("entries"),
    tx.objectStore("taken"),
    tx.objectStore("about"),
  ];
  const [log, heads, count, last, takenCount, lastTaken] = await Promise.all([
    about.get("log"),
    about.get("heads"),
    entries.count(),
    entries.openCursor(null, "prev"),
    taken.count(),
    taken.openKeyCursor(null, "prev"),
  ]);
  return {
    log: log?.text ?? "",
    count,
    last: last?.value.text ?? "",
    taken: takenCount,
    lastTaken: lastTaken?.key ?? 0,
    heads: heads?.text ?? "",
  };
}

/** Every line. */
export function readLedger(): Promise<Ledger> {
  return withDatabase(async (db) => {
    const tx = db.transaction(["entries", "taken", "about"]);
    const store = tx.objectStore("taken");
    const [ends, own, taken, keys] = await Promise.all([
      endsIn(tx),
      tx.objectStore("entries").getAll(),
      store.getAll(),
      store.getAllKeys(),
      tx.done,
    ]);
    const lines = [...own.map(ownLine), ...taken.map((line, i) => takenLine(line, keys[i] ?? 0))];
    return { ends, lines };
  });
}

export interface Since {
  readonly ends: Ends;
  /** The own rows at the numbers that were asked for; undefined where there is none. */
  readonly rows: readonly (Row | undefined)[];
  /** Own lines after `count`. */
  readonly after: readonly StoredLine[];
  /** The lines that were asked for; fewer where one is not there. */
  readonly lines: readonly StoredLine[];
}

/** What was added to the own log after its first `count` lines, and single lines, in one look. */
export function readSince(
  count: number,
  numbers: readonly number[],
  wanted: readonly At[],
): Promise<Since> {
  return withDatabase(async (db) => {
    const tx = db.transaction(["entries", "taken", "about"]);
    const [entries, taken] = [tx.objectStore("entries"), tx.objectStore("taken")];
    const one = async ({ own, key }: At): Promise<readonly StoredLine[]> => {
      const found = own ? await entries.get(key) : await taken.get(key);
      if (found === undefined) return [];
      return ["seq" in found ? ownLine(found) : takenLine(found, key)];
    };
    const [ends, rows, after, lines] = await Promise.all([
      endsIn(tx),
      Promise.all(numbers.map((number) => entries.get(number))),
      entries.getAll(IDBKeyRange.lowerBound(count, true)),
      Promise.all(wanted.map(one)),
      tx.done,
    ]);
    return { ends, rows, after: after.map(ownLine), lines: lines.flat() };
  });
}

/** Nothing is stored yet, neither an own line nor one from elsewhere. */
export async function isUnused(): Promise<boolean> {
  const { ends } = await readSince(0, [], []);
  return ends.count + ends.taken === 0;
}

/**
 * Starts a new log where the old one lost its end or went on elsewhere: two lines must never claim one
 * number. The old log's lines move, unchanged, to those that are only kept.
 */
export function closeLog(log: string): Promise<void> {
  return withDatabase(async (db) => {
    const tx = db.transaction(["entries", "taken", "about"], "readwrite", { durability: "strict" });
    const done = tx.done;
    done.catch(() => undefined);
    const about = tx.objectStore("about");
    const [own, now] = await Promise.all([tx.objectStore("entries").getAll(), about.get("log")]);
    // Another window may have closed it already.
    if (now?.text === log) {
      const taken = tx.objectStore("taken");
      await Promise.all([
        ...own.map(({ text }) => taken.add({ text, mine: true, whole: true })),
        tx.objectStore("entries").clear(),
        about.put({ name: "log", text: newId() }),
      ]);
    }
    await done;
  });
}

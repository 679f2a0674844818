// All that is stored: the phone's own log, and lines that came from elsewhere.
import { withDatabase, type Database, type Taken } from "./database";
import { newId } from "./ids";
import { StoreError } from "./trouble";
import { isHead, type Head } from "./witness";

export interface Ledger {
  readonly log: string;
  readonly lines: readonly Taken[];
  /** Ends of logs that files told of; what they promise may be missing here. */
  readonly heads: readonly Head[];
}

function headsFrom(text: string | undefined): readonly Head[] {
  const found: unknown = text === undefined ? [] : JSON.parse(text);
  return Array.isArray(found) ? found.filter(isHead) : [];
}

async function read(db: Database): Promise<Ledger> {
  const tx = db.transaction(["entries", "taken", "about"]);
  const about = tx.objectStore("about");
  const [own, taken, log, heads] = await Promise.all([
    tx.objectStore("entries").getAll(),
    tx.objectStore("taken").getAll(),
    about.get("log"),
    about.get("heads"),
    tx.done,
  ]);
  const mine = own.map(({ text }) => ({ text, mine: true, whole: true }));
  return { log: log?.text ?? "", lines: [...mine, ...taken], heads: headsFrom(heads?.text) };
}

export function readLedger(): Promise<Ledger> {
  return withDatabase(read);
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

/** Adds lines and heads that a file brought. Nothing that is there is changed; read back afterwards. */
export function takeIn(taken: readonly Taken[], heads: readonly Head[]): Promise<void> {
  return withDatabase(async (db) => {
    const tx = db.transaction(["taken", "about"], "readwrite", { durability: "strict" });
    const done = tx.done;
    done.catch(() => undefined);
    const store = tx.objectStore("taken");
    const there = new Set((await store.getAll()).map(({ text }) => text));
    const fresh = taken.filter(({ text }) => !there.has(text));
    const text = JSON.stringify(heads);
    await Promise.all([
      ...fresh.map((line) => store.add(line)),
      tx.objectStore("about").put({ name: "heads", text }),
      done,
    ]);
    const stored = new Set((await db.getAll("taken")).map((line) => line.text));
    if (!taken.every((line) => stored.has(line.text))) throw new StoreError("other");
  });
}

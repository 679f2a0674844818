// The connection to IndexedDB, and what can go wrong with it.
import { openDB, unwrap, type DBSchema, type IDBPDatabase } from "idb";
import { newId } from "./ids";
import { endAllWhenLeft, endWhenLeft, whenHere } from "./leaving";
import type { Row } from "./entry";
import { StoreError } from "./trouble";
import { STORE } from "../phone/which";

const VERSION = 2;
const BLOCKED_MS = 2_000;
const CLOSED_MS = 150;
const MOST_OPENINGS = 5;

/** A line of another log, or of one of this phone's that was closed. */
export interface Taken {
  readonly text: string;
  /** Written here, before the log was closed. */
  readonly mine: boolean;
  /** False for a line in quarantine: kept and passed on, never used. */
  readonly whole: boolean;
}

export interface Shape extends DBSchema {
  entries: { key: number; value: Row; indexes: { id: string } };
  taken: { key: number; value: Taken };
  about: { key: string; value: { readonly name: string; readonly text: string } };
}

export type Database = IDBPDatabase<Shape>;

let connection: Promise<Database> | null = null;
let lost: () => void = () => undefined;

function forget(): void {
  connection = null;
}

/** Calls back when the browser ends an open connection, as it does when it deletes the data. */
export function whenLost(callBack: () => void): void {
  lost = callBack;
}

function makeFirstStores(db: Database): void {
  const entries = db.createObjectStore("entries", { keyPath: "seq" });
  entries.createIndex("id", "id", { unique: true });
  // A new installation, or one whose data was wiped, starts a new log: numbers never repeat in one.
  db.createObjectStore("about", { keyPath: "name" })
    .add({ name: "log", text: newId() })
    .catch(() => undefined);
}

async function connect(): Promise<Database> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let giveUp: () => void = () => undefined;
  const waited = new Promise<never>((_resolve, reject) => {
    giveUp = () => {
      reject(new StoreError("blocked"));
    };
  });
  const opened = openDB<Shape>(STORE, VERSION, {
    blocked() {
      // Another window holds the older version: without this the wait would be for ever, without a word.
      timer = setTimeout(giveUp, BLOCKED_MS);
    },
    upgrade(db, before, _after, transaction) {
      endWhenLeft(unwrap(transaction));
      if (before < 1) makeFirstStores(db);
      db.createObjectStore("taken", { autoIncrement: true });
    },
    blocking(_current, _wanted, event) {
      // A newer page waits for this connection: holding on would block its upgrade.
      (event.target as IDBDatabase).close();
      forget();
    },
    terminated() {
      forget();
      lost();
    },
  });
  try {
    const db = await Promise.race([opened, waited]);
    endAllWhenLeft(unwrap(db));
    return db;
  } catch (error) {
    opened.then(
      (db) => {
        db.close();
      },
      () => undefined,
    );
    throw error;
  } finally {
    clearTimeout(timer);
  }
}

function isCalled(error: unknown, ...names: readonly string[]): boolean {
  return (error instanceof Error || error instanceof DOMException) && names.includes(error.name);
}

/** While the browser deletes the data it closes every new connection at once. */
async function connectSoon(): Promise<Database> {
  for (let tries = 1; tries < MOST_OPENINGS; tries += 1) {
    try {
      return await connect();
    } catch (error) {
      if (!isCalled(error, "AbortError")) throw error;
      await new Promise((done) => setTimeout(done, CLOSED_MS));
    }
  }
  return connect();
}

/**
 * Plain http has no hashes, so nothing could be sealed: said before anything is typed. A page around
 * this one could steer what is pressed, and hosts that send no headers cannot forbid that.
 */
function refuseUnsafePlace(): void {
  if (!window.isSecureContext) throw new StoreError("insecure");
  if (window.top !== window.self) throw new StoreError("framed");
}

function current(): Promise<Database> {
  connection ??= connectSoon().catch((error: unknown) => {
    forget();
    throw error;
  });
  return connection;
}

/** A connection that died in the background never comes back: only a new one helps, and once is enough. */
function isDead(error: unknown): boolean {
  return isCalled(error, "InvalidStateError", "UnknownError", "AbortError");
}

/** Runs `work` on the open connection, and once more on a new one when the connection was dead. */
export async function withDatabase<T>(work: (db: Database) => Promise<T>): Promise<T> {
  refuseUnsafePlace();
  await whenHere();
  const opening = current();
  const db = await opening;
  try {
    return await work(db);
  } catch (error) {
    if (!isDead(error)) throw error;
    db.close();
    // Several may have met the dead one: only the first of them opens another.
    if (connection === opening) forget();
    await whenHere();
    return work(await current());
  }
}

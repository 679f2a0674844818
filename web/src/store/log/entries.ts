// Append only: an entry is added in one transaction that also takes its number, and counts as saved
// only after the transaction is complete and the stored text was read back.
import { withDatabase, type Database } from "./database";
import { aboutFrom, entryFrom, parsedLine, type Row, type Storable } from "./entry";
import { newId } from "./ids";
import { hashOfLine, holdsTheSame, lineAfter, type End } from "./line";
import { StoreError, troubleOf, type StoreTrouble } from "./trouble";
import { noteWitness } from "./witness";

export type Saved =
  | { readonly kind: "saved"; readonly row: Row }
  | { readonly kind: "not_saved"; readonly trouble: StoreTrouble };

/** Each failed try means that another window has stored an entry in between. */
const MOST_TRIES = 100;

interface Seen {
  readonly end: End;
  /** The row that holds the content already, or another content under its id. */
  readonly there: Row | undefined;
}

async function look(db: Database, id: string): Promise<Seen> {
  const tx = db.transaction(["entries", "about"]);
  const entries = tx.objectStore("entries");
  const [about, last, there] = await Promise.all([
    tx.objectStore("about").get("log"),
    entries.openCursor(null, "prev"),
    entries.index("id").get(id),
    tx.done,
  ]);
  if (about === undefined) throw new StoreError("other");
  return { end: { log: about.text, seq: last?.key ?? 0, text: last?.value.text ?? "" }, there };
}

function isStored(row: Row, content: Storable): boolean {
  const line = parsedLine(row.text);
  const entry = aboutFrom(line) ?? entryFrom(line);
  return entry !== null && holdsTheSame(entry, content);
}

/** Adds the row where the log still ends as it did when the row was sealed. */
async function addAt(db: Database, row: Row, end: End): Promise<boolean> {
  const tx = db.transaction(["entries", "about"], "readwrite", { durability: "strict" });
  // Registered before anything else, or an abort in between would be an unhandled rejection.
  const done = tx.done;
  done.catch(() => undefined);
  const entries = tx.objectStore("entries");
  const [about, last, there] = await Promise.all([
    tx.objectStore("about").get("log"),
    entries.openCursor(null, "prev"),
    entries.index("id").getKey(row.id),
  ]);
  const isEnd = (last?.key ?? 0) === end.seq && (last?.value.text ?? "") === end.text;
  const fits = isEnd && about?.text === end.log && there === undefined;
  await Promise.all([...(fits ? [entries.add(row)] : []), done]);
  return fits;
}

/** Hashes cannot be made inside a transaction: it would end while the page waits for them. */
async function add(db: Database, content: Storable): Promise<Row> {
  for (let tries = 0; tries < MOST_TRIES; tries += 1) {
    const { end, there } = await look(db, content.id);
    if (there !== undefined && isStored(there, content)) return there;
    // The same id with other content is another check: it gets its own id, nothing is overwritten.
    const fresh = there === undefined ? content : { ...content, id: newId() };
    const row = { seq: end.seq + 1, id: fresh.id, text: await lineAfter(end, fresh) };
    if (await addAt(db, row, end)) return row;
  }
  throw new StoreError("other");
}

async function addAndReadBack(db: Database, content: Storable): Promise<Row> {
  const row = await add(db, content);
  const tx = db.transaction("entries");
  const [stored] = await Promise.all([tx.store.get(row.seq), tx.done]);
  if (stored === undefined || stored.text !== row.text || stored.id !== row.id)
    throw new StoreError("other");
  return row;
}

export async function saveEntry(content: Storable): Promise<Saved> {
  try {
    const row = await withDatabase((db) => addAndReadBack(db, content));
    const { log } = JSON.parse(row.text) as { log: string };
    noteWitness({ log, count: row.seq, head: await hashOfLine(row.text) });
    return { kind: "saved", row };
  } catch (error) {
    return { kind: "not_saved", trouble: troubleOf(error) };
  }
}

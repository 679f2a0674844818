// Append only: an entry is added in one transaction that also takes its number, and counts as saved
// only after the transaction is complete and the stored text was read back.
import { withDatabase, StoreError, troubleOf, type Database, type StoreTrouble } from "./database";
import { rowOf, type Content, type Row } from "./entry";
import { newId } from "./ids";

export type Saved =
  | { readonly kind: "saved"; readonly row: Row }
  | { readonly kind: "not_saved"; readonly trouble: StoreTrouble };

async function logId(db: Database): Promise<string> {
  const about = await db.get("about", "log");
  if (about === undefined) throw new StoreError("other");
  return about.text;
}

/** The same id with other content is another check: it gets its own id, and nothing is overwritten. */
async function add(db: Database, content: Content, log: string): Promise<Row> {
  const tx = db.transaction("entries", "readwrite", { durability: "strict" });
  // Registered before anything else, or an abort in between would be an unhandled rejection.
  const done = tx.done;
  done.catch(() => undefined);
  const there = await tx.store.index("id").get(content.id);
  if (there !== undefined && there.text === rowOf(content, log, there.seq).text) {
    await done;
    return there;
  }
  const last = await tx.store.openKeyCursor(null, "prev");
  const fresh = there === undefined ? content : { ...content, id: newId() };
  const row = rowOf(fresh, log, (last?.key ?? 0) + 1);
  await Promise.all([tx.store.add(row), done]);
  return row;
}

async function addAndReadBack(db: Database, content: Content): Promise<Row> {
  const row = await add(db, content, await logId(db));
  const stored = await db.get("entries", row.seq);
  if (stored === undefined || stored.text !== row.text || stored.id !== row.id)
    throw new StoreError("other");
  return row;
}

export async function saveEntry(content: Content): Promise<Saved> {
  try {
    return { kind: "saved", row: await withDatabase((db) => addAndReadBack(db, content)) };
  } catch (error) {
    return { kind: "not_saved", trouble: troubleOf(error) };
  }
}

export function readRows(): Promise<Row[]> {
  return withDatabase((db) => db.getAll("entries"));
}

// The ticks of a pour once more, in IndexedDB. A browser writes its notes (localStorage) when it finds the
// time, some seconds or minutes later: killed in between it has lost them, while a transaction that was
// told to be complete has not. The notes stay first, since they can be written and read at once.
import { withDatabase } from "../log/database";

const FIRST = "pouring.";

/** In the order in which they were noted; a failure costs nothing that the notes do not have. */
export function noteTicks(machine: string, text: string): void {
  void withDatabase(async (db) => {
    const tx = db.transaction("about", "readwrite", { durability: "strict" });
    await Promise.all([tx.store.put({ name: FIRST + machine, text }), tx.done]);
  }).catch(() => undefined);
}

/** What was noted last of each machine; nothing where it cannot be read. */
export async function notedTicks(): Promise<ReadonlyMap<string, string>> {
  const range = IDBKeyRange.bound(FIRST, `${FIRST}\uffff`);
  const rows = await withDatabase((db) => db.getAll("about", range)).catch(() => []);
  return new Map(rows.map(({ name, text }) => [name.slice(FIRST.length), text]));
}

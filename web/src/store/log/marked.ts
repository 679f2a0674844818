// Lines in quarantine, looked at anew by each build: the one that took them in may only have been too old.
import { dropCheckpointIn } from "./checkpoint";
import { withDatabase } from "./database";

const LOOKED = "looked";
/** A log of years is tens of megabytes: so many rows at once keep memory and page free. */
const ROWS = 500;

/** What is marked; nothing where this build has looked already. */
export function markedLines(): Promise<readonly string[]> {
  return withDatabase(async (db) => {
    if ((await db.get("about", LOOKED))?.text === __BUILD_ID__) return [];
    const found: string[] = [];
    let after = -Infinity;
    for (;;) {
      const range = IDBKeyRange.lowerBound(after, true);
      const [rows, keys] = await Promise.all([
        db.getAll("taken", range, ROWS),
        db.getAllKeys("taken", range, ROWS),
      ]);
      found.push(...rows.filter(({ whole }) => !whole).map(({ text }) => text));
      const last = keys.at(-1);
      if (last === undefined) return found;
      after = last;
    }
  });
}

/** Takes the mark from lines that turned out whole, and notes that this build has looked. No text changes. */
export function liftMarks(whole: ReadonlySet<string>): Promise<void> {
  return withDatabase(async (db) => {
    const tx = db.transaction(["taken", "about"], "readwrite", { durability: "strict" });
    const done = tx.done;
    done.catch(() => undefined);
    const about = tx.objectStore("about");
    if (whole.size > 0) {
      const store = tx.objectStore("taken");
      for (let at = await store.openCursor(); at !== null; at = await at.continue()) {
        const row = at.value;
        if (!row.whole && whole.has(row.text)) await at.update({ ...row, whole: true });
      }
      await dropCheckpointIn(about);
    }
    await about.put({ name: LOOKED, text: __BUILD_ID__ });
    await done;
  });
}

// What a file brings into the store.
import type { IDBPTransaction } from "idb";
import { dropCheckpointIn } from "./checkpoint";
import { withDatabase, type Shape, type Taken } from "./database";
import { isTombstone, parsedLine, TOMBSTONE } from "./entry";
import { sealOf } from "./line";
import { StoreError } from "./trouble";
import type { Head } from "./witness";

type Writing = IDBPTransaction<Shape, ("entries" | "taken" | "about")[], "readwrite">;

/** Rows that are added in one turn of the page. */
const ROWS = 100;

interface Place {
  readonly log: string;
  readonly seq: number;
  readonly id: string;
}

function placeOf(text: string): Place | null {
  const { log, seq, id } = (parsedLine(text) ?? {}) as Partial<Place>;
  return log === undefined || seq === undefined || id === undefined ? null : { log, seq, id };
}

/** Whether two texts are of one line; rows of the first schema have no seal to tell them by. */
function isSameLine(one: string, other: string): boolean {
  const seal = sealOf(one);
  if (seal !== null) return seal === sealOf(other);
  const [a, b] = [placeOf(one), placeOf(other)];
  return a !== null && b !== null && a.log === b.log && a.seq === b.seq && a.id === b.id;
}

/** Puts a tombstone where its line is stored; false where that line is not here. */
async function replaceBy(tx: Writing, { text, whole }: Taken): Promise<boolean> {
  const [entries, taken] = [tx.objectStore("entries"), tx.objectStore("taken")];
  const place = placeOf(text);
  const own = place === null ? undefined : await entries.get(place.seq);
  const isOwn = own !== undefined && isSameLine(own.text, text);
  if (isOwn) await entries.put({ seq: own.seq, id: own.id, text });
  let isHere = isOwn;
  for (let at = await taken.openCursor(); at !== null; at = await at.continue()) {
    if (at.value.text === text || !isSameLine(at.value.text, text)) continue;
    isHere = true;
    await at.update({ text, mine: at.value.mine, whole });
  }
  return isHere;
}

/**
 * Adds lines and heads that a file brought; read back afterwards. Nothing that is there is changed, but
 * for a line whose content the office has taken out.
 */
export function takeIn(lines: readonly Taken[], heads: readonly Head[]): Promise<void> {
  return withDatabase(async (db) => {
    const tx = db.transaction(["entries", "taken", "about"], "readwrite", { durability: "strict" });
    const done = tx.done;
    done.catch(() => undefined);
    const store = tx.objectStore("taken");
    // Not parsed where it says no such word: megabytes of lines would hold the page up.
    const stones = lines.filter(
      ({ text, whole }) => whole && text.includes(TOMBSTONE) && isTombstone(parsedLine(text)),
    );
    const replaced = new Set<Taken>();
    for (const stone of stones) if (await replaceBy(tx, stone)) replaced.add(stone);
    const there = new Set((await store.getAll()).map(({ text }) => text));
    const fresh = lines.filter((line) => !there.has(line.text) && !replaced.has(line));
    // In pieces: thousands of rows at once would hold the page up.
    for (let first = 0; first < fresh.length; first += ROWS) {
      await Promise.all(fresh.slice(first, first + ROWS).map((line) => store.add(line)));
    }
    await Promise.all([
      tx.objectStore("about").put({ name: "heads", text: JSON.stringify(heads) }),
      dropCheckpointIn(tx.objectStore("about")),
      done,
    ]);
    const stored = new Set(
      [...(await db.getAll("taken")), ...(stones.length > 0 ? await db.getAll("entries") : [])].map(
        ({ text }) => text,
      ),
    );
    if (!lines.every(({ text }) => stored.has(text))) throw new StoreError("other");
  });
}

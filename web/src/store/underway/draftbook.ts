// Every draft once more, in IndexedDB. A browser writes its notes (localStorage) when it finds the time,
// some seconds or minutes later: killed in between it has lost the last keys, while a transaction that was
// told to be complete has not. The notes stay first, since they can be written and read at once.
import { withDatabase } from "../log/database";

/** A draft as it is kept; without one, it is over. The higher count is the later copy. */
export interface Kept {
  readonly writes: number;
  readonly draft: object | null;
}

const FIRST = "draft.";
const waiting = new Map<string, Kept>();
const busy = new Set<string>();

function readKept(text: string): Kept | null {
  try {
    const { writes, draft } = JSON.parse(text) as Partial<Kept>;
    return typeof writes === "number" && typeof draft === "object" ? { writes, draft } : null;
  } catch {
    return null;
  }
}

/** Another window may have kept a later one in the meantime. */
async function put(name: string, kept: Kept): Promise<void> {
  await withDatabase(async (db) => {
    const tx = db.transaction("about", "readwrite", { durability: "strict" });
    const done = tx.done;
    done.catch(() => undefined);
    const before = await tx.store.get(FIRST + name);
    const isLater = kept.writes > (readKept(before?.text ?? "null")?.writes ?? 0);
    const row = { name: FIRST + name, text: JSON.stringify(kept) };
    await Promise.all([...(isLater ? [tx.store.put(row)] : []), done]);
  });
}

async function work(name: string): Promise<void> {
  busy.add(name);
  for (let next = waiting.get(name); next !== undefined; next = waiting.get(name)) {
    waiting.delete(name);
    // A failure costs nothing that the notes do not have.
    await put(name, next).catch(() => undefined);
  }
  busy.delete(name);
}

/** Keys that come while one is being written are written together, after it. */
export function copyDraft(name: string, kept: Kept): void {
  waiting.set(name, kept);
  if (!busy.has(name)) void work(name);
}

/** What was kept last under each name; nothing where it cannot be read. */
export async function copiedDrafts(): Promise<ReadonlyMap<string, Kept>> {
  const range = IDBKeyRange.bound(FIRST, `${FIRST}\uffff`);
  const rows = await withDatabase((db) => db.getAll("about", range)).catch(() => []);
  const read = rows.map(({ name, text }) => [name.slice(FIRST.length), readKept(text)] as const);
  return new Map(read.filter((row): row is [string, Kept] => row[1] !== null));
}

/** Only the very copy that was seen: another window may have begun the next draft. */
export async function forgetCopy(name: string, { writes }: Kept): Promise<void> {
  await withDatabase(async (db) => {
    const tx = db.transaction("about", "readwrite", { durability: "strict" });
    const done = tx.done;
    done.catch(() => undefined);
    const now = await tx.store.get(FIRST + name);
    const isSame = readKept(now?.text ?? "null")?.writes === writes;
    await Promise.all([...(isSame ? [tx.store.delete(FIRST + name)] : []), done]);
  }).catch(() => undefined);
}

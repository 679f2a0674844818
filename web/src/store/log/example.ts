// The invented example: its entries come in as those of another phone do, and go without a trace.
import { deleteDB } from "idb";
import year from "../../../../shared/demo/year.txt?url";
import type { Taken } from "./database";
import { isUnused } from "./ledger";
import { dropAllNotes } from "../phone/notes";
import { takeIn } from "./takein";
import { isExample, STORE } from "../phone/which";
import { isHead } from "./witness";

/** The first line of a file tells of its logs' ends, the last one closes it. */
async function readYear(): Promise<void> {
  const answer = await fetch(year);
  if (!answer.ok) throw new Error(`example: ${answer.status}`);
  const [first = "", ...rest] = (await answer.text()).trimEnd().split("\n");
  const { logs } = JSON.parse(first) as { logs: unknown[] };
  const taken: readonly Taken[] = rest
    .slice(0, -1)
    .map((text) => ({ text, mine: false, whole: true }));
  await takeIn(taken, logs.filter(isHead));
}

/** Fills the example's own database when it is looked at for the first time. */
export async function fillExample(): Promise<void> {
  if (!isExample) return;
  if (await isUnused()) await readYear();
}

/** Removes the example's database and notes, and shows the phone's own shop. */
export async function leaveExample(): Promise<void> {
  dropAllNotes();
  // Open connections close themselves when they hear of it.
  await deleteDB(STORE);
  location.assign(location.pathname);
}

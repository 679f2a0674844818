// What a due second reading is told by: all that went in since its check, until somebody has read it.
import { isUsed } from "./lines";
import type { AnyEntry, CheckEntry, RecheckEntry, ToldEntry } from "./entry";

/** When a reading in the log was read: as it was typed, and never after it was stored. */
export function readAtOf({ body, measured_at }: CheckEntry | RecheckEntry | ToldEntry): string {
  const now = "now" in body && typeof body.now === "string" ? body.now : measured_at;
  return Date.parse(now) < Date.parse(measured_at) ? now : measured_at;
}

function dueOf({ kind, body }: AnyEntry): string | undefined {
  return kind === "pour" && "recheck_due_at" in body ? body.recheck_due_at : undefined;
}

function wentIn({ kind }: AnyEntry): boolean {
  return kind === "pour" || kind === "unknown_addition";
}

/** Two phones say different things of a pour: it went in all the same. */
function isInDoubt(entry: AnyEntry): boolean {
  return wentIn(entry) && entry.amended?.standing === "conflict";
}

/** Whether it is the last word about a reading that was due by then, in milliseconds. */
function isLast(entry: AnyEntry, due_ms: number): boolean {
  if (entry.kind === "clean_out") return entry.body.finished;
  if (entry.kind !== "check" && entry.kind !== "recheck") return false;
  if (!("reading" in entry.body)) return entry.kind === "recheck";
  return Date.parse(readAtOf(entry)) >= due_ms;
}

function ofMachine(entries: readonly AnyEntry[]): readonly AnyEntry[] {
  const used = entries.filter((entry) => isUsed(entry) || isInDoubt(entry));
  const pour = used.filter((entry) => dueOf(entry) !== undefined).at(-1);
  if (pour?.kind !== "pour" || !("plan" in pour.body)) return [];
  const { plan } = pour.body;
  const planned = used.find(({ id }) => id === plan);
  const check = planned?.kind === "plan" ? planned.body.check : plan;
  const since = used.slice(used.findIndex(({ id }) => id === check) + 1);
  let due_ms = Date.parse(dueOf(pour) ?? "");
  const mixes_ms = due_ms - Date.parse(pour.measured_at);
  const found: AnyEntry[] = [];
  for (const entry of since) {
    if (wentIn(entry)) {
      found.push(entry);
      if (entry.place > pour.place)
        due_ms = Math.max(due_ms, Date.parse(entry.measured_at) + mixes_ms);
    } else if (isLast(entry, due_ms)) return [...found, entry];
  }
  return found;
}

/** Of all entries in their order those that a start has to know, however old they are. */
export function duePartsOf(entries: readonly AnyEntry[]): readonly AnyEntry[] {
  const found = new Map<string, AnyEntry[]>();
  for (const entry of entries) {
    const own = found.get(entry.machine);
    if (own === undefined) found.set(entry.machine, [entry]);
    else own.push(entry);
  }
  return [...found.values()].flatMap(ofMachine);
}

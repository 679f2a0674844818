// What the deeds of a machine say about now: a second reading that is due, the newest strength.
import type { CheckEntry, DeedEntry, PourEntry, RecheckEntry } from "./entry";
import { deeds, entries, lastCheck } from "./journal";

export function deedById(id: string): DeedEntry | undefined {
  return deeds.value.find((deed) => deed.id === id);
}

function isOf(machine: string) {
  return (entry: { readonly machine: string }): boolean => entry.machine === machine;
}

/** As pycore finds it: the last pour with a due time, until somebody has read, or said that nobody will. */
export function dueRecheck(machine: string): PourEntry | undefined {
  const pours = deeds.value.filter(isOf(machine)).filter((deed) => deed.kind === "pour");
  const last = pours.filter(({ body }) => body.recheck_due_at !== undefined).at(-1);
  if (last === undefined) return undefined;
  const read = [
    ...entries.value.filter((entry) => entry.kind === "check" && "reading" in entry.body),
    ...deeds.value.filter(({ kind }) => kind === "recheck"),
  ].filter(isOf(machine));
  return read.some(({ place }) => place > last.place) ? undefined : last;
}

/** The newest of checks and second readings, for the machine's state. */
export function lastMeasured(machine: string): CheckEntry | RecheckEntry | undefined {
  const check = lastCheck(machine);
  const again = deeds.value
    .filter(isOf(machine))
    .filter((deed) => deed.kind === "recheck")
    .filter(({ body }) => body.reading !== undefined)
    .at(-1);
  if (check === undefined || again === undefined) return again ?? check;
  return again.place > check.place ? again : check;
}

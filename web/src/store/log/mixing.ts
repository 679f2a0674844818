// When what was poured has mixed, and the second reading that is due then. Read before, a sump tells little.
import { isoWithOffset } from "../../words/times";
import { DAY_MS, endOf, isPour, lastDue, toldOf, type AnyPour, type Due } from "./dueparts";
import type { AnyEntry, Entry, PourEntry } from "./entry";
import { recent, recentDeedsTold, recentTold } from "./journal";

/** Where no recipe says how long: common practice, no source. */
export const USUAL_MIXING_MIN = 30;
const MINUTE_MS = 60_000;

/** The last pour, and until when it mixes. */
export interface Mixing {
  readonly poured_at: string;
  readonly due_at: string;
}

/** The pour with a recipe that a reading is due after, and when. */
export interface DueReading {
  readonly pour: PourEntry;
  readonly due_at: string;
}

function isOf(machine: string) {
  return (entry: { readonly machine: string }): boolean => entry.machine === machine;
}

function isEmptied(entry: Entry): boolean {
  return entry.kind === "clean_out" && entry.body.finished;
}

/** Where in the log the charge began that was in at a place; -1 without a clean-out before. */
export function emptiedAt(machine: string, place = Infinity): number {
  const emptied = recent.value.filter(isOf(machine)).filter(isEmptied);
  return emptied.filter((one) => one.place < place).at(-1)?.place ?? -1;
}

/** What is used of a machine, and what went in there though two phones say different things of it. */
function toldAt(machine: string): readonly AnyEntry[] {
  const all = [...recentTold.value, ...recentDeedsTold.value].filter(isOf(machine));
  return [...toldOf(all)].sort((a, b) => a.place - b.place);
}

/** Ticked and told, in their order. */
export function poursOf(machine: string): readonly AnyPour[] {
  return toldAt(machine).filter(isPour);
}

/**
 * As pycore finds it: what is poured while something mixes has to mix as long. `read_ms`: what was told
 * only after somebody had read does not make that reading too early.
 */
function mixingOf(pours: readonly AnyPour[], due: Due | undefined, read_ms: number): Mixing | null {
  const mixes_ms = due?.mixes_ms ?? USUAL_MIXING_MIN * MINUTE_MS;
  const first = due === undefined ? null : { poured_at: due.pour.measured_at, due_at: due.due_at };
  return pours
    .filter(({ place }) => place > (due?.since.place ?? -1))
    .filter(({ body, measured_at }) => body.pours.length > 0 && Date.parse(measured_at) <= read_ms)
    .reduce<Mixing | null>((found, { measured_at: poured_at }) => {
      const until_ms = Date.parse(poured_at) + mixes_ms;
      if (found !== null && until_ms <= Date.parse(found.due_at)) return found;
      return { poured_at, due_at: isoWithOffset(new Date(until_ms)) };
    }, first);
}

/**
 * What had not mixed when somebody read; `place`: of the reading in the log, where it stands there. A due
 * time more than a day later is that of a wrong clock.
 */
export function unmixedAt(machine: string, read_at: string, place = Infinity): Mixing | null {
  const read_ms = Date.parse(read_at);
  const emptied = emptiedAt(machine, place);
  const pours = poursOf(machine).filter((one) => one.place < place && one.place > emptied);
  const mixing = mixingOf(pours, lastDue(pours), read_ms);
  const left_ms = mixing === null ? 0 : Date.parse(mixing.due_at) - read_ms;
  return left_ms > 0 && left_ms < DAY_MS ? mixing : null;
}

/**
 * As pycore finds it: the last pour with a due time, until somebody has read after that time or cleaned
 * out, or said that nobody will read.
 */
export function dueRecheck(machine: string): DueReading | undefined {
  const told = toldAt(machine);
  const pours = told.filter(isPour);
  const due = lastDue(pours);
  if (due === undefined || endOf(told, due) !== undefined) return undefined;
  const due_at = mixingOf(pours, due, Infinity)?.due_at ?? due.due_at;
  return { pour: due.pour, due_at };
}

// When what was poured has mixed, and the second reading that is due then. Read before, a sump tells little.
import { isoWithOffset } from "../../words/times";
import type { DeedEntry, Entry, PourEntry, ToldEntry } from "./entry";
import { recent, recentDeeds, recentDeedsTold, recentTold } from "./journal";

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

export type AnyPour = PourEntry | Extract<ToldEntry, { kind: "pour" }>;

function isOf(machine: string) {
  return (entry: { readonly machine: string }): boolean => entry.machine === machine;
}

export function isEmptied(entry: Entry): boolean {
  return entry.kind === "clean_out" && entry.body.finished;
}

/**
 * Ticked and told, in their order. Where two phones say different things of one, how much went in is in
 * doubt, not that something did.
 */
export function poursOf(machine: string): readonly AnyPour[] {
  return [...recentTold.value, ...recentDeedsTold.value]
    .filter((entry): entry is AnyPour => entry.kind === "pour")
    .filter((entry) => entry.machine === machine && entry.amended?.standing !== "withdrawn")
    .sort((a, b) => a.place - b.place);
}

export function isInDoubt({ amended }: AnyPour): boolean {
  return amended?.standing === "conflict";
}

function dueOf({ body }: AnyPour): string | undefined {
  return "recheck_due_at" in body ? body.recheck_due_at : undefined;
}

/** As pycore finds it: what is poured while something mixes has to mix as long. */
function mixingBefore(machine: string, place: number): Mixing | null {
  const emptied = recent.value.filter(isOf(machine)).filter(isEmptied).at(-1)?.place ?? -1;
  let found: Mixing | null = null;
  let mixes_ms = USUAL_MIXING_MIN * MINUTE_MS;
  for (const pour of poursOf(machine)) {
    if (pour.place >= place || pour.place < emptied) continue;
    const poured_at = pour.measured_at;
    const due_at = dueOf(pour);
    if (due_at !== undefined) {
      mixes_ms = Date.parse(due_at) - Date.parse(poured_at);
      found = { poured_at, due_at };
    } else if (pour.body.pours.length > 0) {
      const until_ms = Date.parse(poured_at) + mixes_ms;
      if (found === null || until_ms > Date.parse(found.due_at))
        found = { poured_at, due_at: isoWithOffset(new Date(until_ms)) };
    }
  }
  return found;
}

/** What had not mixed when somebody read; `place`: of the reading in the log, where it stands there. */
export function unmixedAt(machine: string, read_at: string, place = Infinity): Mixing | null {
  const mixing = mixingBefore(machine, place);
  return mixing !== null && Date.parse(read_at) < Date.parse(mixing.due_at) ? mixing : null;
}

function endsIt(entry: Entry | DeedEntry): boolean {
  if (entry.kind === "clean_out") return isEmptied(entry);
  const isRead = (entry.kind === "check" || entry.kind === "recheck") && "reading" in entry.body;
  if (isRead) return unmixedAt(entry.machine, entry.measured_at, entry.place) === null;
  return entry.kind === "recheck";
}

/**
 * As pycore finds it: the last pour with a due time, until somebody has read after that time or cleaned
 * out, or said that nobody will read.
 */
export function dueRecheck(machine: string): DueReading | undefined {
  const pours = poursOf(machine).filter((one): one is PourEntry => "plan" in one.body);
  const pour = pours.filter((one) => dueOf(one) !== undefined).at(-1);
  if (pour === undefined) return undefined;
  const later = [...recent.value, ...recentDeeds.value]
    .filter(isOf(machine))
    .filter(({ place }) => place > pour.place);
  if (later.some(endsIt)) return undefined;
  const due_at = mixingBefore(machine, Infinity)?.due_at;
  return due_at === undefined ? undefined : { pour, due_at };
}

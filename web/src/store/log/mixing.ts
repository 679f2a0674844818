// When what was poured has mixed, and the second reading that is due then. Read before, a sump tells little.
import { isoWithOffset } from "../../words/times";
import { readAtOf } from "./dueparts";
import type { DeedEntry, Entry, PourEntry, ToldEntry } from "./entry";
import { recent, recentDeeds, recentDeedsTold, recentTold } from "./journal";

/** Where no recipe says how long: common practice, no source. */
export const USUAL_MIXING_MIN = 30;
const MINUTE_MS = 60_000;
const DAY_MS = 86_400_000;

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

/**
 * The pour that mixes until a due time: the one that has it, or the last part before the rest was given up.
 * None where nothing of the recipe went in, as after a correction.
 */
function mixesSince(pour: AnyPour, pours: readonly AnyPour[]): AnyPour | undefined {
  const plan = "plan" in pour.body ? pour.body.plan : undefined;
  const isPart = ({ body }: AnyPour): boolean => "plan" in body && body.plan === plan;
  const went = pours.filter(({ body, place }) => body.pours.length > 0 && place <= pour.place);
  return went.filter((one) => one.id === pour.id || (plan !== undefined && isPart(one))).at(-1);
}

/**
 * As pycore finds it: what is poured while something mixes has to mix as long. `read_ms`: what was told
 * only after somebody had read does not make that reading too early.
 */
function mixingBefore(machine: string, place: number, read_ms: number): Mixing | null {
  const emptied = recent.value.filter(isOf(machine)).filter(isEmptied).at(-1)?.place ?? -1;
  const pours = poursOf(machine).filter((one) => one.place < place && one.place > emptied);
  let found: Mixing | null = null;
  let mixes_ms = USUAL_MIXING_MIN * MINUTE_MS;
  for (const pour of pours) {
    const poured_at = pour.measured_at;
    const poured_ms = Date.parse(poured_at);
    const due_at = dueOf(pour);
    if (due_at !== undefined) {
      if (mixesSince(pour, pours) === undefined) continue;
      mixes_ms = Date.parse(due_at) - poured_ms;
      found = { poured_at, due_at };
    } else if (pour.body.pours.length > 0 && poured_ms <= read_ms) {
      const until_ms = poured_ms + mixes_ms;
      if (found === null || until_ms > Date.parse(found.due_at))
        found = { poured_at, due_at: isoWithOffset(new Date(until_ms)) };
    }
  }
  return found;
}

/**
 * What had not mixed when somebody read; `place`: of the reading in the log, where it stands there. A due
 * time more than a day later is that of a wrong clock.
 */
export function unmixedAt(machine: string, read_at: string, place = Infinity): Mixing | null {
  const read_ms = Date.parse(read_at);
  const mixing = mixingBefore(machine, place, read_ms);
  const left_ms = mixing === null ? 0 : Date.parse(mixing.due_at) - read_ms;
  return left_ms > 0 && left_ms < DAY_MS ? mixing : null;
}

function endsIt(entry: Entry | DeedEntry): boolean {
  if (entry.kind === "clean_out") return isEmptied(entry);
  if (entry.kind !== "check" && entry.kind !== "recheck") return false;
  if (!("reading" in entry.body)) return entry.kind === "recheck";
  return unmixedAt(entry.machine, readAtOf(entry), entry.place) === null;
}

/**
 * As pycore finds it: the last pour with a due time, until somebody has read after that time or cleaned
 * out, or said that nobody will read.
 */
export function dueRecheck(machine: string): DueReading | undefined {
  const pours = poursOf(machine);
  const pour = pours
    .filter((one): one is PourEntry => "plan" in one.body && dueOf(one) !== undefined)
    .filter((one) => mixesSince(one, pours) !== undefined)
    .at(-1);
  const since = pour && mixesSince(pour, pours);
  if (pour === undefined || since === undefined) return undefined;
  const later = [...recent.value, ...recentDeeds.value]
    .filter(isOf(machine))
    .filter(({ place }) => place > since.place);
  if (later.some(endsIt)) return undefined;
  const due_at = mixingBefore(machine, Infinity, Infinity)?.due_at;
  return due_at === undefined ? undefined : { pour, due_at };
}

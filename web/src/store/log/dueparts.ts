// What a due second reading is told by: all that went in since its check, until somebody has read it.
import { isInDoubt, isUsed, wentIn } from "./lines";
import type { AnyEntry, CheckEntry, PourEntry, RecheckEntry, ToldEntry } from "./entry";

export const DAY_MS = 86_400_000;

export type AnyPour = PourEntry | Extract<ToldEntry, { kind: "pour" }>;

/** The last recipe with a due time. */
export interface Due {
  readonly pour: PourEntry;
  readonly due_at: string;
  /** What of the recipe went in last: the rest may have been given up, hours later too. */
  readonly since: AnyPour;
  readonly mixes_ms: number;
}

/** When a reading in the log was read: as it was typed, and never after it was stored. */
export function readAtOf({ body, measured_at }: CheckEntry | RecheckEntry | ToldEntry): string {
  const now = "now" in body && typeof body.now === "string" ? body.now : measured_at;
  return Date.parse(now) < Date.parse(measured_at) ? now : measured_at;
}

export function isPour(entry: AnyEntry): entry is AnyPour {
  return entry.kind === "pour";
}

function isPartOf({ body }: AnyPour, plan: string): boolean {
  return "plan" in body && body.plan === plan;
}

/** Of pours in order. None of a recipe of which nothing went in, as after a correction. */
export function lastDue(pours: readonly AnyPour[]): Due | undefined {
  for (const pour of [...pours].reverse()) {
    const { body, measured_at } = pour;
    if (!("plan" in body) || body.recheck_due_at === undefined) continue;
    const { plan, recheck_due_at: due_at } = body;
    const own = pours.filter((one) => isPartOf(one, plan) && one.body.pours.length > 0);
    const since = own.filter(({ place }) => place <= pour.place).at(-1);
    const mixes_ms = Date.parse(due_at) - Date.parse(measured_at);
    if (since !== undefined) return { pour: pour as PourEntry, due_at, since, mixes_ms };
  }
  return undefined;
}

/** As pycore has it: whether nothing is due after it. `poured_ms`: what was poured since, when. */
function endsIt(entry: AnyEntry, { due_at, mixes_ms }: Due, poured_ms: readonly number[]): boolean {
  if (entry.kind === "clean_out") return entry.body.finished;
  if (entry.kind !== "check" && entry.kind !== "recheck") return false;
  if (!("reading" in entry.body)) return entry.kind === "recheck";
  const read_ms = Date.parse(readAtOf(entry));
  const told = poured_ms.filter((at_ms) => at_ms <= read_ms).map((at_ms) => at_ms + mixes_ms);
  const due_ms = Math.max(Date.parse(due_at), ...told);
  // A day before, a clock was wrong at the pour or is now.
  return read_ms >= due_ms || read_ms <= due_ms - DAY_MS;
}

/** Of a machine's entries in order the one after which nothing is due any more. */
export function endOf(told: readonly AnyEntry[], due: Due): AnyEntry | undefined {
  const poured_ms: number[] = [];
  return told
    .filter(({ place }) => place > due.since.place)
    .find((entry) => {
      if (isPour(entry) && entry.body.pours.length > 0)
        poured_ms.push(Date.parse(entry.measured_at));
      return endsIt(entry, due, poured_ms);
    });
}

/** What of a machine's entries may be told of: used, or in doubt only in how much went in. */
export function toldOf<T extends AnyEntry>(entries: readonly T[]): readonly T[] {
  return entries.filter((entry) => isUsed(entry) || isInDoubt(entry));
}

function ofMachine(entries: readonly AnyEntry[]): readonly AnyEntry[] {
  const told = toldOf(entries);
  const due = lastDue(told.filter(isPour));
  if (due === undefined) return [];
  const { plan } = due.pour.body;
  const planned = told.find(({ id }) => id === plan);
  const check = planned?.kind === "plan" ? planned.body.check : plan;
  // The check may not be on this phone, or stand later by a wrong clock.
  const begins = [
    ...entries.filter(({ id }) => id === check),
    ...told.filter((entry) => isPour(entry) && isPartOf(entry, plan)),
  ];
  const begin = Math.min(...begins.map(({ place }) => place));
  const end = endOf(told, due);
  const within = told.filter(
    (entry) => entry.place >= begin && entry.place <= (end?.place ?? Infinity),
  );
  return within.filter((entry) => wentIn(entry) || entry === end);
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

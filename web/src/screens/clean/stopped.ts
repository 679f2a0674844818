// A clean-out that was stopped before its end, and how it goes on: on this phone or, when its entry was
// taken in, on another one.
import {
  cleaningOf,
  type Cleaning,
  type CleanState,
  type CleanTick,
} from "../../store/underway/cleaning";
import type { Entry, MachineEntry } from "../../store/log/entry";
import { recent } from "../../store/log/journal";
import { isMeasured } from "../../store/log/pinned";
import { isRunIn } from "../check/pour/steps";
import { isDaysAhead } from "../now";
import { reached, STEPS } from "./steps";

type CleanOutEntry = Extract<Entry, { kind: "clean_out" }>;

/** What ends one: another charge, or somebody has measured what is in the sump now. */
function isEnder(entry: Entry): boolean {
  if (entry.kind === "clean_out") return entry.body.finished;
  return entry.kind === "check" && isMeasured(entry);
}

/** Inside a log the number is certain; between logs a clock of another day came after nothing. */
function isAfter(one: Entry, other: Entry): boolean {
  if (one.strand === other.strand) return one.seq > other.seq;
  if (isDaysAhead(one.measured_at)) return false;
  return isDaysAhead(other.measured_at) || one.place > other.place;
}

const stateAt = ({ body }: CleanOutEntry, wanted: CleanState): string | undefined =>
  body.steps?.find(({ state }) => state === wanted)?.at;

/** Those of a machine that nothing has ended, in order. */
function unfinishedAt(machine: string): readonly CleanOutEntry[] {
  const here = recent.value.filter((entry) => entry.machine === machine);
  const enders = here.filter(isEnder);
  return here
    .filter((entry) => entry.kind === "clean_out")
    .filter((entry) => !entry.body.finished && !enders.some((ender) => isAfter(ender, entry)));
}

/** Undefined while one is under way on this phone, or where the machine went on with its old coolant. */
export function stoppedAt(machine: string): CleanOutEntry | undefined {
  if (cleaningOf(machine).value !== null) return undefined;
  const stopped = unfinishedAt(machine).at(-1);
  if (stopped === undefined || drainedAt(machine) !== undefined) return stopped;
  const isInUse = recent.value.some(
    (entry) =>
      entry.kind === "machine_state" &&
      entry.machine === machine &&
      ["in_use", "watch"].includes(entry.body.state) &&
      isAfter(entry, stopped),
  );
  return isInUse ? undefined : stopped;
}

interface Drained {
  readonly at: string;
  /** Since when some of the new charge is in. */
  readonly charged_at: string | undefined;
}

/** Of the clean-out that goes on here, where nobody has measured since. */
function drainedHere(machine: string): Drained | undefined {
  const cleaning = cleaningOf(machine).value;
  const ticks = reached(cleaning?.ticks ?? []);
  const at = ticks.find(({ state }) => state === "drained")?.at;
  if (at === undefined) return undefined;
  const isEnded = recent.value
    .filter(
      (entry) => entry.machine === machine && isEnder(entry) && !isDaysAhead(entry.measured_at),
    )
    .some((entry) => Date.parse(entry.measured_at) >= Date.parse(at));
  const charged = ticks.find(({ state }) => state === "charged")?.at;
  return isEnded ? undefined : { at, charged_at: charged ?? cleaning?.buckets.at(-1) };
}

/** When the sump was emptied by a clean-out that is not finished: the last reading is of what is gone. */
export function drainedAt(machine: string): Drained | undefined {
  const here = drainedHere(machine);
  if (here !== undefined) return here;
  return unfinishedAt(machine)
    .flatMap((entry): readonly Drained[] => {
      const at = stateAt(entry, "drained");
      if (at === undefined) return [];
      const isCharged = (entry.body.charge ?? []).length > 0;
      const charged_at = stateAt(entry, "charged") ?? (isCharged ? entry.measured_at : undefined);
      return [{ at, charged_at }];
    })
    .at(-1);
}

/** States in their order up to the last one that was reached; what may be left out was. */
function ticksFrom(stopped: CleanOutEntry): readonly CleanTick[] {
  const steps = STEPS.map(({ state, mayLeaveOut }): CleanTick | null => {
    const at = stateAt(stopped, state);
    if (at !== undefined) return { state, at };
    return mayLeaveOut ? { state, at: stopped.measured_at, leftOut: true } : null;
  });
  // Nothing is taken for done behind a step that nobody ticked.
  const missing = steps.indexOf(null);
  const done = (missing === -1 ? steps : steps.slice(0, missing)).filter((tick) => tick !== null);
  const last = done.map(({ leftOut }) => leftOut !== true).lastIndexOf(true);
  return done.slice(0, last + 1);
}

/** Null where its volumes are in another unit than the machine's now: a number alone would say something else. */
function textsFrom(
  { body }: CleanOutEntry,
  { units }: MachineEntry["body"]["machine"],
): Record<string, string> | null {
  const { waste, rinse, left, left_strength, cleaner, waste_note, lot } = body;
  const volumes = [waste, rinse, left].filter((typed) => typed !== undefined);
  if (volumes.some(({ unit }) => unit !== units.plate)) return null;
  const texts = Object.entries({
    ...{ waste: waste?.text, rinse: rinse?.text, left: left?.text },
    ...{ left_strength: left_strength?.text, cleaner, waste_note, lot },
  });
  return Object.fromEntries(
    texts.flatMap(([name, text]) => (text === undefined ? [] : [[name, text] as const])),
  );
}

/** More buckets than any charge here would have. */
const MOST_BUCKETS = 500;

/**
 * What a stopped clean-out had reached; the entry that it ends with takes its place. Buckets of the new charge
 * count as those of its recipe only while the set-up is the one they were worked out by; otherwise they are part
 * of what stays in the sump, which is asked for again, and the old entry goes on telling of them and of the rest.
 */
export function resumedFrom(stopped: CleanOutEntry, machine: MachineEntry): Partial<Cleaning> {
  const ticks = ticksFrom(stopped);
  const texts = textsFrom(stopped, machine.body.machine);
  const { charge = [] } = stopped.body;
  const count = charge.reduce((sum, row) => sum + row.count, 0);
  const toLeft = ticks.slice(
    0,
    STEPS.findIndex(({ state }) => state === "left"),
  );
  const isOfRecipe = !charge.some(isRunIn) && machine.place < stopped.place && count < MOST_BUCKETS;
  if (texts === null) return { ticks: toLeft };
  const { left, left_strength: strength, ...others } = texts;
  const isKnown = left !== undefined && strength !== undefined;
  if (charge.length > 0 && !(isOfRecipe && isKnown)) return { ticks: toLeft };
  if (!isKnown) return { ticks: toLeft, texts: others, continues: stopped.id };
  const buckets = Array.from({ length: count }, () => stopped.measured_at);
  return { ticks, texts, buckets, continues: stopped.id };
}

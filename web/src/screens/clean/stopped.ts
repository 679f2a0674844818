// A clean-out that was stopped before its end, and how it goes on: on this phone or, when its entry was
// taken in, on another one.
import { cleaningOf, type Cleaning, type CleanTick } from "../../store/underway/cleaning";
import type { Entry, MachineEntry } from "../../store/log/entry";
import { recent } from "../../store/log/journal";
import { isMeasured } from "../../store/log/pinned";
import { isRunIn } from "../check/pour/steps";
import { isAhead } from "../now";
import { reached, STEPS } from "./steps";

type CleanOutEntry = Extract<Entry, { kind: "clean_out" }>;

/** Whether a clean-out that was begun before it is not gone on with. */
function isAfterwards(entry: Entry): boolean {
  if (entry.kind === "machine_state") return ["in_use", "watch"].includes(entry.body.state);
  return entry.kind === "check" && isMeasured(entry);
}

/** Undefined while one is under way on this phone. */
export function stoppedAt(machine: string): CleanOutEntry | undefined {
  if (cleaningOf(machine).value !== null) return undefined;
  const last = recent.value
    .filter((entry) => entry.machine === machine && !isAhead(entry.measured_at))
    .filter((entry) => entry.kind === "clean_out" || isAfterwards(entry))
    .at(-1);
  return last?.kind === "clean_out" && !last.body.finished ? last : undefined;
}

/** When the sump was emptied by a clean-out that is not finished. */
export function emptiedAt(machine: string): string | undefined {
  const cleaning = cleaningOf(machine).value;
  const steps = cleaning === null ? stoppedAt(machine)?.body.steps : reached(cleaning.ticks);
  return steps?.find(({ state }) => state === "drained")?.at;
}

/** States in their order up to the last one that was reached; what is missing was left out. */
function ticksFrom({ body, measured_at }: CleanOutEntry): readonly CleanTick[] {
  const done = new Map((body.steps ?? []).map((step) => [step.state, step.at]));
  const places = STEPS.flatMap(({ state }, i) => (done.has(state) ? [i] : []));
  return STEPS.slice(0, Math.max(-1, ...places) + 1).map(({ state }) => {
    const at = done.get(state);
    return at === undefined ? { state, at: measured_at, leftOut: true } : { state, at };
  });
}

function textsFrom(
  { body }: CleanOutEntry,
  { units }: MachineEntry["body"]["machine"],
): Record<string, string> {
  const { waste, rinse, left, left_strength, cleaner, waste_note, lot } = body;
  const litres = { waste, rinse, left };
  const numbers = Object.entries(litres).flatMap(([name, typed]) =>
    typed === undefined || typed.unit !== units.plate ? [] : [[name, typed.text] as const],
  );
  const words = Object.entries({ left_strength: left_strength?.text, cleaner, waste_note, lot });
  return Object.fromEntries([
    ...numbers,
    ...words.flatMap(([name, text]) => (text === undefined ? [] : [[name, text] as const])),
  ]);
}

/**
 * What a stopped clean-out had reached. Buckets of the new charge count as those of its recipe only while the
 * set-up is the one they were worked out by; otherwise they are part of what stays in the sump, which is asked
 * for again.
 */
export function resumedFrom(stopped: CleanOutEntry, machine: MachineEntry): Partial<Cleaning> {
  const ticks = ticksFrom(stopped);
  const texts = textsFrom(stopped, machine.body.machine);
  const { charge = [] } = stopped.body;
  const { left, left_strength: strength, ...others } = texts;
  const isOfRecipe = !charge.some(isRunIn) && machine.place < stopped.place;
  if (left === undefined || strength === undefined || (charge.length > 0 && !isOfRecipe)) {
    const place = STEPS.findIndex(({ state }) => state === "left");
    return { ticks: ticks.slice(0, place), texts: others };
  }
  const count = charge.reduce((sum, row) => sum + row.count, 0);
  return { ticks, texts, buckets: Array.from({ length: count }, () => stopped.measured_at) };
}

// The states of a clean-out in their order, and what each one has to say and to ask.
import type { CleanState, CleanTick } from "../../store/underway/cleaning";
import { say, type Key } from "../../words/say";

export interface CleanStep {
  readonly state: CleanState;
  readonly lines: readonly Key[];
  readonly mayLeaveOut: boolean;
}

const step = (state: CleanState, lines: readonly Key[], mayLeaveOut = false): CleanStep => ({
  state,
  lines,
  mayLeaveOut,
});

export const STEPS: readonly CleanStep[] = [
  step("ready", [
    "clean.ready_1",
    "clean.ready_2",
    "clean.ready_3",
    "clean.ready_4",
    "clean.ready_5",
  ]),
  step("skimmed", ["clean.skimmed_1", "clean.skimmed_2"]),
  step("cleaner_in", ["clean.cleaner_in_1", "clean.cleaner_in_2", "clean.cleaner_in_3"], true),
  step("ran", ["clean.ran_1", "clean.ran_2", "clean.ran_3"], true),
  step("locked", ["clean.locked_1", "clean.locked_2"]),
  step("drained", ["clean.drained_1", "clean.drained_2", "clean.drained_3"]),
  step("chips_out", ["clean.chips_out_1", "clean.chips_out_2", "clean.chips_out_3"]),
  step("rinsed", ["clean.rinsed_1", "clean.rinsed_2"]),
  step("rinse_out", ["clean.rinse_out_1", "clean.rinse_out_2"]),
  step("rinsed_again", ["clean.rinsed_again_1", "clean.rinsed_again_2"], true),
  step("left", ["clean.left_1"]),
  step("charged", ["clean.charge_1", "clean.charge_2"]),
  step("circulated", ["clean.circulated_1", "clean.circulated_2"]),
];

/** States that were reached, without those that were left out. */
export function reached(ticks: readonly CleanTick[]): { state: CleanState; at: string }[] {
  return ticks.filter(({ leftOut }) => leftOut !== true).map(({ state, at }) => ({ state, at }));
}

/** The page after the last tick counts as a step of its own. */
const TOTAL = STEPS.length + 1;

/** After so many ticks. */
export function stepOf(ticks: number): { readonly n: string; readonly total: string } {
  return { n: String(ticks + 1), total: String(TOTAL) };
}

export function stepWord(one: CleanStep): string {
  return say("clean.step", stepOf(STEPS.indexOf(one)));
}

export function lastStep(): string {
  return say("clean.step", stepOf(STEPS.length));
}

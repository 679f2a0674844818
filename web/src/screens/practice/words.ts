// A judged step in sentences; every number in them came from pycore.
import type { JudgePracticeResult, Shown, StepJudged } from "../../core/messages";
import type { Practice } from "../../store/underway/practice";
import { write, writeNumber } from "../../words/numbers";
import { isKey, say } from "../../words/say";

const written = (shown: Shown | undefined): string => (shown === undefined ? "" : write(shown));

/** The step worked out from the right numbers, in one line. */
export function workedLine(
  step: StepJudged,
  working: JudgePracticeResult["working"],
  level: Practice["level"],
): string {
  const name = step.step === "top_up" && level === "rich" ? "top_up_rich" : step.step;
  const { reading, factor, missing, gain } = working;
  return say(`practice.worked.${name}`, {
    depth: written(working.depth),
    full_depth: written(working.full_depth),
    full_volume: written(working.full_volume),
    reading: reading === undefined ? "" : writeNumber(reading),
    factor: factor === undefined ? "" : writeNumber(factor),
    volume: write(working.volume),
    room: write(working.room),
    aim: write(working.aim),
    missing: writeNumber(missing),
    gain: writeNumber(gain),
    right: write(step.right),
  });
}

/** What is said about the person's own number; of a right one the mark says all. */
export function verdictLine(step: StepJudged): string {
  const { right, allowed, difference, own, verdict = "shown" } = step;
  if (verdict === "right") return "";
  const blanks = {
    right: write(right),
    allowed: write(allowed),
    difference: written(difference),
    own: written(own),
  };
  const isPoints = right.unit === "%" && (verdict === "near" || verdict === "off");
  return say(isPoints ? `practice.said.${verdict}_points` : `practice.said.${verdict}`, blanks);
}

/** A slip that this build does not know is not made up. */
export function slipLine(slip: string | undefined): string | null {
  const key = `practice.slip.${slip ?? ""}`;
  return isKey(key) ? say(key) : null;
}

export function faultLine(fault: string, over: Shown, left: Shown): string {
  const key = `practice.fault.${fault}`;
  return isKey(key) ? say(key, { over: write(over), left: write(left) }) : fault;
}

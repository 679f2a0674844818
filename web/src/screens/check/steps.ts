// The order of the questions of a check, and what every question is given.
import type { MachineEntry } from "../../store/entry";
import type { Order, Walk } from "../../store/walk";
import { say } from "../../words/say";

export type CheckStep = "dip" | "touched" | "reading" | "line" | "target" | "answers" | "recipe";

export interface CheckProps {
  readonly machine: MachineEntry;
  readonly walk: Walk;
  readonly change: (change: Partial<Walk>) => void;
  readonly next: () => void;
  readonly onBack: () => void;
  /** What follows in the address: a step can have pages of its own. */
  readonly rest: readonly string[];
  /** "Step 1 of 3" */
  readonly step: string;
}

const DIP: readonly CheckStep[] = ["dip", "touched"];
const READING: readonly CheckStep[] = ["reading", "line"];

/** Without a factor there is no per cent, so there is nothing that a target could be compared with. */
export function stepsOf(order: Order, hasFactor: boolean): readonly CheckStep[] {
  const measured = order === "dip_first" ? [...DIP, ...READING] : [...READING, ...DIP];
  return hasFactor
    ? [...measured, "target", "answers", "recipe"]
    : [...measured, "answers", "recipe"];
}

export function isCheckStep(
  text: string | undefined,
  steps: readonly CheckStep[],
): text is CheckStep {
  return steps.some((step) => step === text);
}

export function stepWords(step: CheckStep, order: Order, hasFactor: boolean): string {
  const groups = order === "dip_first" ? [DIP, READING] : [READING, DIP];
  const found = groups.findIndex((group) => group.includes(step));
  const total = hasFactor ? 3 : 2;
  if (step === "answers" || step === "recipe")
    return say(step === "answers" ? "step.answers" : "step.recipe");
  return say("step.of", { n: String(found < 0 ? total : found + 1), total: String(total) });
}

// The order of the questions of a check, and what every question is given.
import type { MachineTyped } from "../../core/messages";
import type { MachineEntry } from "../../store/entry";
import type { Order, Walk } from "../../store/walk";
import { say, type Key } from "../../words/say";
import { dipSteps } from "./level";

type OrdinaryStep =
  "dip" | "clean_side" | "touched" | "reading" | "line" | "target" | "answers" | "recipe";
/** Not on the ordinary way: what holds only this once, and what is done without dip or reading. */
type SideStep = "stock" | "fill" | "holding" | "usual" | "state";
export type CheckStep = OrdinaryStep | SideStep;

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

const DIP: readonly CheckStep[] = ["dip", "clean_side", "touched"];
const READING: readonly CheckStep[] = ["reading", "line"];
const SIDE: readonly CheckStep[] = ["stock", "fill", "holding", "usual", "state"];
/** Where a page off the ordinary way leads back to. */
const AFTER: Readonly<Partial<Record<CheckStep, CheckStep>>> = { usual: "holding" };

/** Without a factor there is no per cent, so there is nothing that a target could be compared with. */
export function stepsOf(
  order: Order,
  hasFactor: boolean,
  machine: MachineTyped,
): readonly CheckStep[] {
  const dip = dipSteps(machine);
  const measured = order === "dip_first" ? [...dip, ...READING] : [...READING, ...dip];
  return hasFactor
    ? [...measured, "target", "answers", "recipe"]
    : [...measured, "answers", "recipe"];
}

export function isCheckStep(
  text: string | undefined,
  steps: readonly CheckStep[],
): text is CheckStep {
  return [...steps, ...SIDE].some((step) => step === text);
}

/** The page that an answer changes; nearly always the one that lists them all. */
export function returnOf(step: CheckStep): CheckStep {
  return AFTER[step] ?? "answers";
}

export function nextOf(step: CheckStep, steps: readonly CheckStep[]): CheckStep | undefined {
  return isSide(step) ? returnOf(step) : steps[steps.indexOf(step) + 1];
}

/** What has to be measured before a page off the ordinary way means anything. */
export function missingBefore(step: CheckStep, walk: Walk): CheckStep | null {
  if ((step === "holding" || step === "usual") && walk.dip.trim() === "") return "dip";
  return step === "state" && walk.reading.trim() === "" ? "reading" : null;
}

const SIDE_WORDS: Readonly<Record<SideStep, Key>> = {
  stock: "step.once",
  fill: "step.once",
  holding: "step.no_reading",
  usual: "step.no_reading",
  state: "step.no_dip",
};

function isSide(step: CheckStep): step is SideStep {
  return SIDE.includes(step);
}

export function stepWords(step: CheckStep, order: Order, hasFactor: boolean): string {
  if (isSide(step)) return say(SIDE_WORDS[step]);
  const groups = order === "dip_first" ? [DIP, READING] : [READING, DIP];
  const found = groups.findIndex((group) => group.includes(step));
  const total = hasFactor ? 3 : 2;
  if (step === "answers" || step === "recipe")
    return say(step === "answers" ? "step.answers" : "step.recipe");
  return say("step.of", { n: String(found < 0 ? total : found + 1), total: String(total) });
}

// The order of the questions of a check, and what every question is given.
import type { MachineTyped } from "../../core/messages";
import type { MachineEntry } from "../../store/log/entry";
import type { Order, Walk } from "../../store/underway/walk";
import { say, type Key } from "../../words/say";
import { dipSteps } from "./dip/level";
import type { LevelChange } from "./lookback";

type OrdinaryStep =
  | "dip"
  | "clean_side"
  | "touched"
  | "since"
  | "reading"
  | "warmth"
  | "line"
  | "target"
  | "answers"
  | "recipe";
/** Not on the ordinary way: what holds only this once, what is done without dip or reading, and more
 * about a reading. */
type SideStep =
  "stock" | "fill" | "holding" | "usual" | "state" | "again" | "blurred" | "second" | "zero";
export type CheckStep = OrdinaryStep | SideStep;

export interface CheckProps {
  readonly machine: MachineEntry;
  readonly walk: Walk;
  readonly change: (change: Partial<Walk>) => void;
  readonly next: () => void;
  /** As next, and Back does not return here. */
  readonly pass: () => void;
  readonly onBack: () => void;
  /** What follows in the address: a step can have pages of its own. */
  readonly rest: readonly string[];
  /** "Step 1 of 3" */
  readonly step: string;
  /** What the log says of the time since the last dip. */
  readonly since: LevelChange;
  /** On another way than the ordinary check: no short cuts into that one. */
  readonly beside?: boolean;
}

const DIP: readonly CheckStep[] = ["dip", "clean_side", "touched", "since"];
const READING: readonly CheckStep[] = ["reading", "warmth", "line"];
const SIDE: readonly CheckStep[] = [
  "stock",
  "fill",
  "holding",
  "usual",
  "state",
  "again",
  "blurred",
  "second",
  "zero",
];
/** Where a page off the ordinary way leads back to. */
const AFTER: Readonly<Partial<Record<CheckStep, CheckStep>>> = {
  usual: "holding",
  zero: "reading",
};

/** What the machine's set-up makes of the way: whether there is a per cent, and whether the warmth of
 * the glass counts. */
export interface Kind {
  readonly hasPercent: boolean;
  readonly asksWarmth: boolean;
}

export function kindOf({ fluid, instrument }: MachineTyped): Kind {
  const isFactor = (fluid.factor ?? fluid.factor_chart) !== undefined;
  return {
    // An instrument that shows per cent has a factor inside.
    hasPercent: isFactor || instrument?.shows === "per_cent",
    asksWarmth: instrument?.compensation === "none",
  };
}

/** Without a factor there is no per cent, so there is nothing that a target could be compared with. */
export function stepsOf(
  order: Order,
  { hasPercent, asksWarmth }: Kind,
  machine: MachineTyped,
): readonly CheckStep[] {
  const dip: readonly CheckStep[] = [...dipSteps(machine), "since"];
  const reading = READING.filter((step) => asksWarmth || step !== "warmth");
  const measured = order === "dip_first" ? [...dip, ...reading] : [...reading, ...dip];
  return hasPercent
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

/** `asksSince`: whether there is anything to ask about the time since the last dip. */
export function nextOf(
  step: CheckStep,
  steps: readonly CheckStep[],
  asksSince: boolean,
): CheckStep | undefined {
  if (step === "blurred") return nextOf("line", steps, asksSince);
  if (isSide(step)) return returnOf(step);
  return steps
    .slice(steps.indexOf(step) + 1)
    .find((candidate) => candidate !== "since" || asksSince);
}

const NEEDS_READING: readonly CheckStep[] = ["state", "again", "blurred", "second", "warmth"];

/** What has to be measured before a page off the ordinary way means anything. */
export function missingBefore(step: CheckStep, walk: Walk): CheckStep | null {
  if (step === "holding" || step === "usual") {
    if (walk.dip.trim() === "") return "dip";
    // With a reading there is a whole check, and a top-up without one would drop it.
    return walk.reading.trim() === "" ? null : "answers";
  }
  return NEEDS_READING.includes(step) && walk.reading.trim() === "" ? "reading" : null;
}

const SIDE_WORDS: Readonly<Record<SideStep, Key>> = {
  stock: "step.once",
  fill: "step.once",
  holding: "step.no_reading",
  usual: "step.no_reading",
  state: "step.no_dip",
  again: "step.reading",
  blurred: "step.reading",
  second: "step.reading",
  zero: "step.reading",
};

function isSide(step: CheckStep): step is SideStep {
  return SIDE.includes(step);
}

export function stepWords(step: CheckStep, order: Order, { hasPercent }: Kind): string {
  if (isSide(step)) return say(SIDE_WORDS[step]);
  const groups = order === "dip_first" ? [DIP, READING] : [READING, DIP];
  const found = groups.findIndex((group) => group.includes(step));
  const total = hasPercent ? 3 : 2;
  if (step === "answers" || step === "recipe")
    return say(step === "answers" ? "step.answers" : "step.recipe");
  return say("step.of", { n: String(found < 0 ? total : found + 1), total: String(total) });
}

// The questions of the set-up in order.
import type { SetupStep } from "../../words/fields";
import type { Form } from "./form";

const STEPS: readonly SetupStep[] = [
  "name",
  "units",
  "litres",
  "size",
  "source",
  "rim",
  "fluid",
  "drum",
  "factor",
  "factor_source",
  "target",
  "limits",
  "bucket",
  "check",
];

/** Not on the ordinary way: opened from the check page, so that a first set-up stays short. */
const ASIDE: readonly SetupStep[] = [
  "things",
  "hidden",
  "dipping",
  "pours",
  "pouring",
  "instrument",
  "zero",
  "metals",
  "sheet",
  "batch",
  "water",
  "pour_here",
  "pail",
  "allow",
  "jugs",
  "mixes",
  "found",
];

const AFTER: Readonly<Partial<Record<SetupStep, SetupStep>>> = {
  pours: "pouring",
  jugs: "mixes",
  mixes: "found",
};

/** Pages aside that lead to others. A poured table answers size and source, so these are passed over. */
export function afterOf(step: SetupStep, isNew: boolean): SetupStep | undefined {
  if (step === "pouring") return isNew ? "rim" : "check";
  return AFTER[step];
}

/** A factor that nobody knows has no source. */
function isAsked(step: SetupStep, form: Form): boolean {
  return step !== "factor_source" || form.hasFactor === "yes";
}

export function stepsFor(form: Form): readonly SetupStep[] {
  return STEPS.filter((step) => isAsked(step, form));
}

/** A factor and where it is from are one step, so that the count is the same before and after the answer. */
const COUNTED = STEPS.filter((step) => step !== "factor_source");

/** Which of how many; undefined for a page aside. */
export function countOf(step: SetupStep): { n: number; total: number } | undefined {
  const n = COUNTED.indexOf(step === "factor_source" ? "factor" : step) + 1;
  return n === 0 ? undefined : { n, total: COUNTED.length };
}

export function isAside(step: SetupStep): boolean {
  return ASIDE.includes(step);
}

export function isSetupStep(text: string | undefined): text is SetupStep {
  return [...STEPS, ...ASIDE].some((step) => step === text);
}

export interface SetupProps {
  readonly form: Form;
  readonly change: (change: Partial<Form>) => void;
  readonly next: () => void;
  readonly onBack: () => void;
  /** The address of another page of this set-up, which leads on from there as from here. */
  readonly to: (step: SetupStep) => string;
  /** Back over so many pages to one that was left for a way aside. */
  readonly backOver: (pages: number, step: SetupStep) => void;
  readonly place: string;
  /** Which of how many; a page aside of the way has no number. */
  readonly step: string | undefined;
}

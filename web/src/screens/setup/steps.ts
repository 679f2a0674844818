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
const ASIDE: readonly SetupStep[] = ["pail", "allow"];

/** A factor that nobody knows has no source. */
function isAsked(step: SetupStep, form: Form): boolean {
  return step !== "factor_source" || form.hasFactor === "yes";
}

export function stepsFor(form: Form): readonly SetupStep[] {
  return STEPS.filter((step) => isAsked(step, form));
}

export function isSetupStep(text: string | undefined): text is SetupStep {
  return [...STEPS, ...ASIDE].some((step) => step === text);
}

export interface SetupProps {
  readonly form: Form;
  readonly change: (change: Partial<Form>) => void;
  readonly next: () => void;
  readonly onBack: () => void;
  readonly place: string;
  /** Which of how many; a page aside of the way has no number. */
  readonly step: string | undefined;
}

// The questions of the set-up in order.
import type { SetupStep } from "../../words/fields";
import type { Form } from "./form";

export const STEPS: readonly SetupStep[] = [
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

/** The last row of a table is its rim, and a factor that nobody knows has no source. */
export function isAsked(step: SetupStep, form: Form): boolean {
  if (step === "rim") return form.kind !== "table";
  return step !== "factor_source" || form.hasFactor === "yes";
}

export function stepsFor(form: Form): readonly SetupStep[] {
  return STEPS.filter((step) => isAsked(step, form));
}

export function isSetupStep(text: string | undefined): text is SetupStep {
  return STEPS.some((step) => step === text);
}

export interface SetupProps {
  readonly form: Form;
  readonly change: (change: Partial<Form>) => void;
  readonly next: () => void;
  readonly onBack: () => void;
  readonly place: string;
  readonly step: string;
}

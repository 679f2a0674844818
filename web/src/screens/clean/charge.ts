// The new charge: the recipe for what the rinse left behind, and what of it is in.
import type { Answer } from "../../core/client";
import type { BucketRow, MachineTyped, PlanCheckResult } from "../../core/messages";
import type { Cleaning } from "../../store/underway/cleaning";
import { recipeOf, type Recipe } from "../check/recipe/chosen";
import { bucketsOf, joined, rowOf } from "../check/pour/steps";
import { useAnswer } from "../core";
import { typedOf } from "./saving";

export function useCharge(
  machine: MachineTyped,
  { texts }: Cleaning,
): Answer<PlanCheckResult> | null {
  const left = typedOf(texts["left"], machine.units.plate);
  const strength = typedOf(texts["left_strength"], "%");
  return useAnswer(
    "plan_charge",
    left === undefined || strength === undefined
      ? null
      : { machine, left, left_strength: strength },
  );
}

export function chargeRecipe(answer: Answer<PlanCheckResult> | null): Recipe | null {
  return answer?.kind === "ok" ? recipeOf(answer.result) : null;
}

/** What went in so far, as the log keeps it. */
export function chargeRows(
  machine: MachineTyped,
  { buckets, otherWay, texts }: Cleaning,
  recipe: Recipe | null,
): readonly BucketRow[] {
  if (otherWay) {
    const each = typedOf(texts["other_l"], machine.units.plate);
    const strength = typedOf(texts["other_pct"], "%");
    return each === undefined || strength === undefined
      ? []
      : [{ count: 1, kind: "mix", each, strength }];
  }
  if (recipe === null) return [];
  return joined(bucketsOf(recipe).slice(0, buckets.length).map(rowOf));
}

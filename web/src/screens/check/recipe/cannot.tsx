// Out of reach is no mistake of anybody: a plain page with the best that can be reached and the ways on.
import type { ComponentChildren } from "preact";
import type { PlanCheckResult } from "../../../core/messages";
import { StateMark } from "../../../elements/statemark";
import { cautionInFull } from "../../../words/codes";
import { write } from "../../../words/numbers";
import { isKey, say } from "../../../words/say";
import type { Recipe } from "./chosen";
import { BeforeAfter } from "./recipeview";

/** These say why, or hold for what is in the sump; the others belong to a recipe that is poured. */
const REASONS: readonly string[] = [
  "needs_stronger_premix",
  "needs_weaker_mix",
  "above_full_mark",
  "stock_short",
  "strong_harms_skin",
  "weak_must_not_stand",
];

/** Where the mixes would do and only marks or stock do not, the case would name the wrong reason. */
function reasonKey({ plan }: PlanCheckResult): string {
  if (plan.cautions.includes("stock_short")) return "cannot.stock";
  return plan.cautions.includes("marks_too_coarse") ? "cannot.marks" : `cannot.${plan.case}`;
}

/** Why the target is out of reach. */
export function cannotSentence(result: PlanCheckResult): string {
  const why = reasonKey(result);
  return isKey(why) ? say(why) : say("cannot.other");
}

/** What comes nearest to it. */
export function bestSentence({ plan }: PlanCheckResult, recipe: Recipe): string {
  const best = write(recipe.strength);
  return plan.pours.length === 0 ? say("cannot.stays", { best }) : say("cannot.reaches", { best });
}

/** A range of one number is no range: a full sump reaches only what it has. */
function reachSentence(blanks: Readonly<Record<string, string>>): string {
  return blanks["reach_low"] === blanks["reach_high"]
    ? say("cannot.only_band", blanks)
    : say("cannot.band", blanks);
}

export function CannotView({
  result,
  recipe,
  children,
}: {
  readonly result: PlanCheckResult;
  readonly recipe: Recipe;
  readonly children: ComponentChildren;
}) {
  const { plan, shown } = result;
  const blanks = {
    low: write(shown.band_low),
    high: write(shown.band_high),
    reach_low: write(shown.reach_low),
    reach_high: write(shown.reach_high),
  };
  return (
    <section class="plain-page">
      <StateMark state={result.assessment.strength?.state ?? "none"} />
      <p class="plain-lead">{cannotSentence(result)}</p>
      <p class="plain-best">{bestSentence(result, recipe)}</p>
      <p>{reachSentence(blanks)}</p>
      <BeforeAfter result={result} recipe={recipe} />
      {plan.cautions
        .filter((code) => REASONS.includes(code))
        .map((code) => (
          <p key={code}>{cautionInFull(code)}</p>
        ))}
      {children}
    </section>
  );
}

// What a check comes to: state, strength, litres and recipe, as pycore worded them for the old and the new numbers.
import type { AssessSumpResult, HoldCheckResult, PlanCheckResult } from "../../core/messages";
import { secondLook } from "../../core/secondlook";
import { stateWord } from "../../words/codes";
import { write } from "../../words/numbers";
import { say, sayCount } from "../../words/say";
import { isEmpty, recipeOf } from "../check/recipe/chosen";

type Outcome = readonly { readonly label: string; readonly value: string }[];

/** The same before and after a correction; undefined where there was none before. */
export interface Pair {
  readonly label: string;
  readonly was: string | undefined;
  readonly now: string;
}

type Result = Partial<PlanCheckResult> &
  Partial<Pick<HoldCheckResult, "holding">> & { readonly assessment?: AssessSumpResult };

function isPlanned(shown: Result): shown is PlanCheckResult {
  return shown.plan !== undefined;
}

function recipeText(shown: Result, way: number | undefined): string | null {
  if (shown.holding !== undefined) return sayCount("tell.buckets", shown.holding.totals.buckets);
  if (!isPlanned(shown)) return null;
  const recipe = recipeOf(shown, way);
  if (recipe === null || isEmpty(recipe)) return say("amend.nothing_to_pour");
  const blanks = {
    then: write(recipe.strength),
    buckets: sayCount("tell.buckets", recipe.buckets),
  };
  return say("amend.recipe_gives", blanks);
}

/** A recipe whose own amounts do not give what it promises is not saved. */
export function isAgreed(shown: object): boolean {
  const result = shown as Result;
  if (!isPlanned(result)) return true;
  const recipe = recipeOf(result);
  return recipe !== null && secondLook(result.shown, recipe).agrees;
}

function outcomeOf(shown: object, way?: number): Outcome {
  const result = shown as Result;
  const { strength, level } = result.assessment ?? {};
  const recipe = recipeText(result, way);
  return [
    { label: say("amend.state"), value: stateWord(strength?.state ?? "none") },
    ...(strength?.shown.strength === undefined
      ? []
      : [{ label: say("amend.strength"), value: write(strength.shown.strength) }]),
    ...(level === undefined
      ? []
      : [{ label: say("amend.volume"), value: write(level.shown.volume) }]),
    ...(recipe === null ? [] : [{ label: say("amend.recipe"), value: recipe }]),
  ];
}

/** What was shown beside what the new numbers lead to; nothing where the new ones show nothing. */
export function outcomePairs(
  before: object | null,
  now: object | null,
  way: number | undefined,
): readonly Pair[] {
  if (now === null) return [];
  const [olds, news] = [before === null ? [] : outcomeOf(before, way), outcomeOf(now)];
  const labels = [...new Set([...news, ...olds].map(({ label }) => label))];
  const valueOf = (list: Outcome, label: string): string | undefined =>
    list.find((one) => one.label === label)?.value;
  return labels.map((label) => ({
    label,
    was: valueOf(olds, label),
    now: valueOf(news, label) ?? say("amend.no_more"),
  }));
}

// One other way as a whole: a recipe like the main one, or what to wait for.
import type { MachineTyped, PlanCheckResult } from "../../../core/messages";
import { StateMark } from "../../../elements/statemark";
import { wayReason } from "../../../words/codes";
import { write } from "../../../words/numbers";
import { say, sayCount } from "../../../words/say";
import { isWait, type Recipe } from "./chosen";
import { Cautions, RecipeView } from "./recipeview";

function WaitView({ result, recipe }: { result: PlanCheckResult; recipe: Recipe }) {
  const { level, levelStrength, days } = recipe;
  return (
    <>
      <StateMark state={result.assessment.strength?.state ?? "none"} />
      {level === null || levelStrength === null ? null : (
        <>
          <p class="plain-best">{say("wait.level", { level: write(level) })}</p>
          <p>{say("wait.then", { strength: write(levelStrength) })}</p>
        </>
      )}
      {days === null ? null : (
        <>
          <p class="plain-best">{sayCount("wait.days", days)}</p>
          <p>{say("wait.topped_up")}</p>
        </>
      )}
      <Cautions codes={recipe.cautions} />
    </>
  );
}

export function WayView({
  result,
  recipe,
  machine,
}: {
  readonly result: PlanCheckResult;
  readonly recipe: Recipe;
  readonly machine: MachineTyped;
}) {
  return (
    <section class="plain-page">
      {recipe.why === null ? null : <p>{wayReason(recipe.why)}</p>}
      {isWait(recipe) ? (
        <WaitView result={result} recipe={recipe} />
      ) : (
        <RecipeView result={result} recipe={recipe} machine={machine} />
      )}
    </section>
  );
}

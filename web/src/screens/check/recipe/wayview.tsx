// One other way as a whole: a recipe like the main one, or what to wait for.
import type { MachineTyped, PlanCheckResult, Shown } from "../../../core/messages";
import { StateMark } from "../../../elements/statemark";
import { wayReason } from "../../../words/codes";
import { write } from "../../../words/numbers";
import { say, sayCount } from "../../../words/say";
import type { Recipe } from "./chosen";
import { Cautions, RecipeView } from "./recipeview";

/** By the stick where it is read as a depth, since nobody sees litres at the machine. */
function levelSentence(level: Shown, depth: Shown | null): string {
  return depth === null
    ? say("wait.level", { level: write(level) })
    : say("wait.level_depth", { level: write(level), depth: write(depth) });
}

function WaitView({ result, recipe }: { result: PlanCheckResult; recipe: Recipe }) {
  const { level, levelDepth, levelStrength, days } = recipe;
  return (
    <>
      <StateMark state={result.assessment.strength?.state ?? "none"} />
      {level === null || levelStrength === null ? null : (
        <>
          <p class="plain-best">{levelSentence(level, levelDepth)}</p>
          <p>{say("wait.then", { strength: write(levelStrength) })}</p>
        </>
      )}
      {level === null ? (
        <>
          {days === null ? null : <p class="plain-best">{sayCount("wait.days", days)}</p>}
          <p class={days === null ? "plain-best" : undefined}>{say("wait.topped_up")}</p>
          {days === null ? <p>{say("wait.no_days")}</p> : null}
        </>
      ) : null}
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
      {recipe.waits ? (
        <WaitView result={result} recipe={recipe} />
      ) : (
        <RecipeView result={result} recipe={recipe} machine={machine} />
      )}
    </section>
  );
}

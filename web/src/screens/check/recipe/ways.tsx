// The other ways: one row each with its reason and what it gives; each leads to its own page.
import type { PlanCheckResult } from "../../../core/messages";
import { wayReason, wayTitle } from "../../../words/codes";
import { write } from "../../../words/numbers";
import { say, sayCount } from "../../../words/say";
import { address } from "../../route";
import { recipeOf, type Recipe } from "./chosen";

/** What a way comes to, in a few words, so that ways can be compared without opening each. */
function summaryOf(recipe: Recipe): string {
  const { waits, level, days, runIn, takeOut, buckets } = recipe;
  const strength = write(recipe.strength);
  if (level !== null) return say("ways.to_level", { level: write(level) });
  if (days !== null) return sayCount("ways.to_days", days);
  if (waits) return say("wait.no_days");
  if (runIn !== null && buckets === 0)
    return say("ways.to_run", { amount: write(runIn), strength });
  if (takeOut !== null)
    return sayCount("ways.to_take_out", buckets, { out: write(takeOut), strength });
  return sayCount("ways.to", buckets, { strength });
}

export function Ways({
  result,
  machine,
}: {
  readonly result: PlanCheckResult;
  /** The machine's id, for the addresses. */
  readonly machine: string;
}) {
  if (result.ways.length === 0) return null;
  return (
    <section class="ways">
      <h2>{say("ways.title")}</h2>
      <ul>
        {result.ways.map(({ why }, i) => {
          const recipe = recipeOf(result, i);
          return (
            <li key={i}>
              <a class="way" href={address("machines", machine, "recipe", "way", String(i + 1))}>
                <span class="way-title">{wayTitle(why)}</span>
                <span>{wayReason(why)}</span>
                {recipe === null ? null : <span class="way-gives">{summaryOf(recipe)}</span>}
              </a>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

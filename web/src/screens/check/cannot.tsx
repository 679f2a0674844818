// Out of reach is no mistake of anybody: a plain page with the best that can be reached and two ways on.
import type { ComponentChildren } from "preact";
import type { PlanCheckResult } from "../../core/messages";
import { StateMark } from "../../elements/statemark";
import { cautionSentence } from "../../words/codes";
import { write } from "../../words/numbers";
import { isKey, say } from "../../words/say";
import { BeforeAfter } from "./recipeview";
import { Ways } from "./ways";

/** These say why; the others belong to a recipe that is poured. */
const REASONS: readonly string[] = [
  "no_room",
  "needs_stronger_premix",
  "needs_weaker_mix",
  "above_full_mark",
  "stock_short",
];

export function CannotView({
  result,
  children,
}: {
  readonly result: PlanCheckResult;
  readonly children: ComponentChildren;
}) {
  const { plan, shown } = result;
  // The mixes would do, only the marks do not: then the case alone would name the wrong reason.
  const isCoarse = plan.cautions.includes("marks_too_coarse");
  const why = isCoarse ? "cannot.marks" : `cannot.${plan.case}`;
  const blanks = {
    low: write(shown.band_low),
    high: write(shown.band_high),
    best: write(shown.strength),
    reach_low: write(shown.reach_low),
    reach_high: write(shown.reach_high),
  };
  return (
    <section class="plain-page">
      <StateMark state="stop" />
      <p class="plain-lead">{isKey(why) ? say(why, blanks) : say("cannot.other", blanks)}</p>
      <p class="plain-best">
        {plan.pours.length === 0 ? say("cannot.stays", blanks) : say("cannot.reaches", blanks)}
      </p>
      <p>{say("cannot.band", blanks)}</p>
      <BeforeAfter result={result} />
      {plan.cautions
        .filter((code) => REASONS.includes(code))
        .map((code) => (
          <p key={code}>{cautionSentence(code)}</p>
        ))}
      <Ways ways={result.ways} />
      <div class="two-ways">{children}</div>
    </section>
  );
}

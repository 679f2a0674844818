// Two methods side by side: that they agree, or by how much they do not and what may lead each astray.
import type { Disagreement, PlanCheckResult, Shown } from "../../../core/messages";
import { methodWord, secondSentence } from "../../../words/codes";
import { write } from "../../../words/numbers";
import { say } from "../../../words/say";

/** One sentence about the second method; null where there was none. */
export function secondLine({ second }: Pick<PlanCheckResult, "second">): string | null {
  if (second === undefined) return null;
  const blanks = { method: methodWord(second.method), strength: write(second.shown.strength) };
  return say(second.agrees ? "second.agrees" : "second.differs", blanks);
}

/** The strength that the recipe is for, and the other one that needs the larger dose. */
export function plannedStrength({ planned_for, shown }: Disagreement): Shown {
  return shown[planned_for];
}

export function otherStrength({ planned_for, shown }: Disagreement): Shown {
  return planned_for === "high" ? shown.low : shown.high;
}

/** Stands before the recipe: whoever pours must know that this is the smaller of two doses. */
export function Apart({
  result,
  toOther,
}: {
  readonly result: PlanCheckResult;
  /** Where the larger dose has its own page. */
  readonly toOther?: string | undefined;
}) {
  const { disagreement: apart } = result;
  if (apart === undefined) return null;
  const { low, high } = apart.shown;
  return (
    <section class="task apart">
      <h2>{say("second.disagree", { low: write(low), high: write(high) })}</h2>
      <ul class="facts">
        {apart.codes.map((code) => (
          <li key={code}>{secondSentence(code)}</li>
        ))}
      </ul>
      {toOther === undefined ? null : (
        <a class="place-link" href={toOther}>
          {say("second.other", { strength: write(otherStrength(apart)) })}
        </a>
      )}
    </section>
  );
}

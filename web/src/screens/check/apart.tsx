// Two methods side by side: that they agree, or by how much they do not and what may lead each astray.
import type { PlanCheckResult } from "../../core/messages";
import { methodWord, secondSentence } from "../../words/codes";
import { write } from "../../words/numbers";
import { say } from "../../words/say";

/** One sentence about the second method; null where there was none. */
export function secondLine({ second }: Pick<PlanCheckResult, "second">): string | null {
  if (second === undefined) return null;
  const blanks = { method: methodWord(second.method), strength: write(second.shown.strength) };
  return say(second.agrees ? "second.agrees" : "second.differs", blanks);
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
  const other = apart.planned_for === "high" ? low : high;
  return (
    <section class="task apart">
      <h2>{say("second.apart_title")}</h2>
      <p class="plain-lead">{say("second.disagree", { low: write(low), high: write(high) })}</p>
      <ul class="facts">
        {apart.codes.map((code) => (
          <li key={code}>{secondSentence(code)}</li>
        ))}
      </ul>
      {toOther === undefined ? null : (
        <a class="place-link" href={toOther}>
          {say("second.other", { strength: write(other) })}
        </a>
      )}
    </section>
  );
}

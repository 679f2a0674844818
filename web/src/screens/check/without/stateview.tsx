// What a reading alone tells: the state and what it means. The log shows the stored one with the same view.
import type { AssessSumpResult, MachineTyped } from "../../../core/messages";
import { StateMark } from "../../../elements/statemark";
import { cautionSentence, noteSentence } from "../../../words/codes";
import { write, writeTyped } from "../../../words/numbers";
import { isKey, say } from "../../../words/say";
import { formula } from "../reading/formula";

export function StateView({
  assessment,
  machine,
}: {
  readonly assessment: AssessSumpResult;
  readonly machine: MachineTyped;
}) {
  const strength = assessment.strength;
  const shown = strength?.shown;
  const state = strength?.state ?? "none";
  const means = `meaning.${state}`;
  const { low, high } = machine.target;
  return (
    <section class="plain-page">
      <div>
        <StateMark state={state} />
        {shown?.strength === undefined ? null : (
          <p class="strength" role="status">
            {write(shown.strength)}
          </p>
        )}
        {shown?.low === undefined || shown.high === undefined ? null : (
          <p class="note">
            {say("state_only.likely", { low: write(shown.low), high: write(shown.high) })}
          </p>
        )}
      </div>
      {isKey(means) ? <p class="plain-lead">{say(means)}</p> : null}
      <p>{say("state_only.text")}</p>
      <ul class="facts">
        <li>{say("reason.reading", { formula: formula(assessment) })}</li>
        <li>{say("hold.band", { low: writeTyped(low), high: writeTyped(high) })}</li>
        {assessment.notes.map((note) => (
          <li key={note}>{noteSentence(note)}</li>
        ))}
      </ul>
      {state === "strong" ? <p>{cautionSentence("strong_harms_skin")}</p> : null}
      <p class="note">{say("recipe.sheet")}</p>
    </section>
  );
}

// A factor from a sheet is surer than one that was guessed on old coolant.
import { Choice, type Option } from "../../../elements/fields/choice";
import { factorKnownByWord } from "../../../words/codes";
import { say } from "../../../words/say";
import type { FactorBy } from "../form";
import { Question } from "../frame";
import type { SetupProps } from "../steps";

const FACTOR_BY: readonly Option<FactorBy>[] = (["sheet", "own_jugs", "old_fluid"] as const).map(
  (value) => ({ value, word: factorKnownByWord(value) }),
);

export function FactorSourceStep(props: SetupProps) {
  const { form, change } = props;
  return (
    <Question
      {...props}
      title={say("factor_source.title")}
      hint={say("factor_source.hint")}
      why={say("factor_source.why")}
      missing={form.factorBy === "" ? say("error.factor_by") : null}
    >
      {() => (
        <Choice
          name="factor-by"
          labelledBy="question"
          options={FACTOR_BY}
          chosen={form.factorBy}
          onChoose={(factorBy) => {
            change({ factorBy });
          }}
        />
      )}
    </Question>
  );
}

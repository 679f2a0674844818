// Where the litres come from decides how far they are trusted.
import { Choice, type Option } from "../../elements/choice";
import { knownByWord } from "../../words/codes";
import { say } from "../../words/say";
import type { KnownBy } from "./form";
import { Question } from "./frame";
import type { SetupProps } from "./steps";

const KNOWN_BY: readonly Option<KnownBy>[] = (["plate", "poured", "said"] as const).map(
  (value) => ({
    value,
    word: knownByWord(value),
  }),
);

export function SourceStep(props: SetupProps) {
  const { form, change } = props;
  return (
    <Question
      {...props}
      title={say("source.title")}
      hint={say("source.hint")}
      why={say("source.why")}
      missing={form.knownBy === "" ? say("error.known_by") : null}
    >
      {() => (
        <Choice
          name="known-by"
          labelledBy="question"
          options={KNOWN_BY}
          chosen={form.knownBy}
          onChoose={(knownBy) => {
            change({ knownBy });
          }}
        />
      )}
    </Question>
  );
}

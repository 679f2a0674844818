// Where the litres come from decides how far they are trusted.
import { Choice, type Option } from "../../../elements/fields/choice";
import { knownByWord } from "../../../words/codes";
import { say } from "../../../words/say";
import type { Form, KnownBy } from "../form";
import { Question } from "../frame";
import type { SetupProps } from "../steps";
import { isMeasured } from "./tank";

const USUAL = ["plate", "poured", "said"] as const;

function knownBy(kind: Form["kind"]): readonly Option<KnownBy>[] {
  // Only measured sides can be the source of a volume that nobody poured.
  const sources = isMeasured(kind) ? (["measured", ...USUAL] as const) : USUAL;
  return sources.map((value) => ({ value, word: knownByWord(value) }));
}

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
          options={knownBy(form.kind)}
          chosen={form.knownBy}
          onChoose={(knownBy) => {
            change({ knownBy });
          }}
        />
      )}
    </Question>
  );
}

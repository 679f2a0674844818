// Bucket and jug more closely: what cannot be measured below their first marks, and what measures.
import type { Option } from "../../../elements/fields/choice";
import { measuredByWord } from "../../../words/codes";
import { say } from "../../../words/say";
import type { Form } from "../form";
import { Question } from "../frame";
import { givenOf, NumberRows, type NumberPart } from "../numberrow";
import { ChoicePart } from "../part";
import type { MeasureBy } from "./shop";
import type { SetupProps } from "../steps";
import { useTogether } from "../together";

const MEASURED_BY: readonly Option<MeasureBy>[] = (["jug", "pail"] as const).map((value) => ({
  value,
  word: measuredByWord(value),
  note: say(`pail.${value}_note`),
}));

function partsOf({ units: { pail, jug } }: Form): readonly NumberPart[] {
  return [
    {
      part: "firstMark",
      path: "pail.first_mark",
      label: say("pail.first_mark"),
      hint: say("pail.first_mark_hint"),
      unit: pail,
    },
    {
      part: "jugFirstMark",
      path: "pail.jug_first_mark",
      label: say("pail.jug_first_mark"),
      unit: jug,
    },
    {
      part: "jugSize",
      path: "pail.jug_size",
      label: say("pail.jug_size"),
      hint: say("pail.jug_size_hint"),
      unit: jug,
    },
  ];
}

export function PailStep(props: SetupProps) {
  const { form, change } = props;
  const parts = partsOf(form);
  // Where the bucket measures concentrate too, its marks may be too far apart for both.
  const whole = useTogether(form, ["pail", "bucket"]);
  return (
    <Question
      {...props}
      title={say("pail.title")}
      hint={say("pail.hint")}
      why={say("pail.why")}
      fields={givenOf(parts, form)}
      whole={whole}
    >
      {({ at }) => (
        <>
          <ChoicePart
            name="measure-by"
            title={say("pail.measure_by")}
            options={MEASURED_BY}
            chosen={form.measureBy}
            onChoose={(measureBy) => {
              change({ measureBy });
            }}
          />
          <NumberRows parts={parts} form={form} change={change} at={at} />
        </>
      )}
    </Question>
  );
}

import { say } from "../../../words/say";
import type { Form } from "../form";
import { Question } from "../frame";
import { askedOf, NumberRows, type NumberPart } from "../numberrow";
import type { SetupProps } from "../steps";
import { useTogether } from "../together";

function partsOf({ units: { pail, jug } }: Form): readonly NumberPart[] {
  return [
    {
      part: "usable",
      path: "bucket.usable",
      label: say("bucket.usable"),
      hint: say("bucket.usable_hint"),
      unit: pail,
    },
    {
      part: "waterMark",
      path: "bucket.water_mark",
      label: say("bucket.water_mark"),
      unit: pail,
    },
    { part: "jugMark", path: "bucket.jug_mark", label: say("bucket.jug_mark"), unit: jug },
  ];
}

export function BucketStep(props: SetupProps) {
  const { form, change } = props;
  const parts = partsOf(form);
  const whole = useTogether(form, ["bucket"]);
  return (
    <Question
      {...props}
      title={say("bucket.title")}
      hint={say("bucket.hint")}
      why={say("bucket.why")}
      fields={askedOf(parts, form)}
      whole={whole}
    >
      {({ at }) => <NumberRows parts={parts} form={form} change={change} at={at} />}
    </Question>
  );
}

import { TextField } from "../../elements/textfield";
import { say } from "../../words/say";
import { Question, type Asked } from "./frame";
import type { SetupProps } from "./steps";
import { useTogether } from "./target";

export function BucketStep(props: SetupProps) {
  const { form, change } = props;
  const { pail, jug } = form.units;
  const fields: readonly Asked[] = [
    { path: "bucket.usable", text: form.usable, unit: pail },
    { path: "bucket.water_mark", text: form.waterMark, unit: pail },
    { path: "bucket.jug_mark", text: form.jugMark, unit: jug },
  ];
  const whole = useTogether(form, ["bucket"]);
  return (
    <Question
      {...props}
      title={say("bucket.title")}
      hint={say("bucket.hint")}
      why={say("bucket.why")}
      fields={fields}
      whole={whole}
    >
      {({ at }) => (
        <>
          <TextField
            id="usable"
            label={say("bucket.usable")}
            hint={say("bucket.usable_hint")}
            unit={pail}
            text={form.usable}
            fault={at("bucket.usable")}
            onText={(usable) => {
              change({ usable });
            }}
          />
          <TextField
            id="water-mark"
            label={say("bucket.water_mark")}
            unit={pail}
            text={form.waterMark}
            fault={at("bucket.water_mark")}
            onText={(waterMark) => {
              change({ waterMark });
            }}
          />
          <TextField
            id="jug-mark"
            label={say("bucket.jug_mark")}
            unit={jug}
            text={form.jugMark}
            fault={at("bucket.jug_mark")}
            onText={(jugMark) => {
              change({ jugMark });
            }}
          />
        </>
      )}
    </Question>
  );
}

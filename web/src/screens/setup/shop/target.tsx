import { TextField } from "../../../elements/fields/textfield";
import { say } from "../../../words/say";
import { Question, type Asked } from "../frame";
import type { SetupProps } from "../steps";
import { useTogether } from "../together";

const PARTS = ["low", "aim", "high"] as const;

export function TargetStep(props: SetupProps) {
  const { form, change } = props;
  const fields: readonly Asked[] = PARTS.map((part) => ({
    path: `target.${part}`,
    text: form[part],
    unit: "%",
  }));
  const whole = useTogether(form, ["target"]);
  return (
    <Question
      {...props}
      title={say("setup_target.title")}
      hint={say("setup_target.hint")}
      why={say("setup_target.why")}
      fields={fields}
      whole={whole}
    >
      {({ at }) =>
        PARTS.map((part) => (
          <TextField
            key={part}
            id={`target-${part}`}
            label={say(`setup_target.${part}`)}
            unit="%"
            text={form[part]}
            fault={at(`target.${part}`)}
            onText={(text) => {
              change({ [part]: text });
            }}
          />
        ))
      }
    </Question>
  );
}

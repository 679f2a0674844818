import { TextField } from "../../../elements/fields/textfield";
import { say } from "../../../words/say";
import { Question, type Asked } from "../frame";
import type { SetupProps } from "../steps";
import { useTogether } from "../together";

const PARTS = ["strong", "weak", "closeness"] as const;

export function LimitsStep(props: SetupProps) {
  const { form, change } = props;
  const fields: readonly Asked[] = PARTS.map((part) => ({
    path: `mixing.${part}`,
    text: form[part],
    unit: "%",
  }));
  const whole = useTogether(form, ["mixing"]);
  return (
    <Question
      {...props}
      title={say("limits.title")}
      hint={say("limits.hint")}
      why={say("limits.why")}
      fields={fields}
      whole={whole}
    >
      {({ at }) =>
        PARTS.map((part) => (
          <TextField
            key={part}
            id={`mixing-${part}`}
            label={say(`limits.${part}`)}
            hint={say(`limits.${part}_hint`)}
            unit="%"
            text={form[part]}
            fault={at(`mixing.${part}`)}
            onText={(text) => {
              change({ [part]: text });
            }}
          />
        ))
      }
    </Question>
  );
}

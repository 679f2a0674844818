// A page of the set-up that asks for per cents which only make sense together.
import { TextField } from "../../../elements/fields/textfield";
import { Question, type Asked } from "../frame";
import type { SetupProps } from "../steps";
import { useTogether } from "../together";

interface PerCent {
  readonly part: "low" | "aim" | "high" | "strong" | "weak" | "closeness";
  readonly label: string;
  readonly hint?: string;
}

interface PerCentsProps extends SetupProps {
  /** Where pycore knows them. */
  readonly group: "target" | "mixing";
  readonly title: string;
  readonly hint: string;
  readonly why: string;
  readonly parts: readonly PerCent[];
}

export function PerCents({ group, parts, ...props }: PerCentsProps) {
  const { form, change } = props;
  const fields: readonly Asked[] = parts.map(({ part }) => ({
    path: `${group}.${part}`,
    text: form[part],
    unit: "%",
  }));
  const whole = useTogether(form, [group]);
  return (
    <Question {...props} fields={fields} whole={whole}>
      {({ at }) =>
        parts.map(({ part, ...words }) => (
          <TextField
            key={part}
            id={`${group}-${part}`}
            {...words}
            unit="%"
            text={form[part]}
            fault={at(`${group}.${part}`)}
            onText={(text) => {
              change({ [part]: text });
            }}
          />
        ))
      }
    </Question>
  );
}

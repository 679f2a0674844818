import { TextField } from "../../../elements/fields/textfield";
import { say } from "../../../words/say";
import { useCore } from "../../core";
import { checkOf } from "../../gate";
import { machineOf, type Form } from "../form";
import { Question, type Asked } from "../frame";
import type { SetupProps } from "../steps";

const PARTS = ["low", "aim", "high"] as const;

/** Order is settled by pycore with the whole machine; faults of other pages are not this page's. */
export function useTogether(form: Form, paths: readonly string[]) {
  const core = useCore();
  return async () => {
    const check = checkOf(await core.ask("read_machine", { machine: machineOf(form) }));
    if (check === null) return null;
    const errors = check.errors.filter((error) =>
      paths.some((path) => error.path.startsWith(`body.machine.${path}`)),
    );
    return { errors, doubts: [] };
  };
}

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

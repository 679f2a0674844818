import { EmptySump } from "../../elements/emptysump";
import { TextField } from "../../elements/textfield";
import { say } from "../../words/say";
import { useCore } from "../core";
import { checkOf } from "../gate";
import { sumpOf } from "./form";
import { Question } from "./frame";
import type { SetupProps } from "./steps";

export function RimStep(props: SetupProps) {
  const { form, change } = props;
  const core = useCore();
  const isGiven = form.rimDepth.trim() !== "";
  const fields = isGiven
    ? [{ path: "sump.rim_depth", text: form.rimDepth, unit: form.units.stick } as const]
    : [];
  return (
    <Question
      {...props}
      title={say("rim.title")}
      hint={say("rim.hint")}
      why={say("rim.why")}
      fields={fields}
      whole={() => core.ask("assess_sump", { sump: sumpOf(form) }).then(checkOf)}
    >
      {({ at }) => (
        <>
          <TextField
            id="rim"
            label={say("rim.label")}
            unit={form.units.stick}
            text={form.rimDepth}
            fault={at("sump.rim_depth")}
            onText={(rimDepth) => {
              change({ rimDepth });
            }}
          />
          <EmptySump />
        </>
      )}
    </Question>
  );
}

// The factor, shown back as an example by pycore, because some sheets divide where others multiply.
import { Choice, type Option } from "../../elements/choice";
import { TextField } from "../../elements/textfield";
import { write, writeNumber } from "../../words/numbers";
import { say } from "../../words/say";
import { useResult } from "../core";
import { fluidOf, type Form } from "./form";
import { Question } from "./frame";
import type { SetupProps } from "./steps";
import { sumpOf } from "./tank";

const EXAMPLE = "5";
function Example({ form }: { readonly form: Form }) {
  const isGiven = form.hasFactor === "yes" && form.factor.trim() !== "";
  const body = {
    sump: sumpOf({ ...form, rimDepth: "", neverAbove: "" }),
    fluid: fluidOf(form),
    reading: { shows: { text: EXAMPLE, unit: "Brix" as const } },
  };
  const shown = useResult("assess_sump", isGiven ? body : null)?.strength?.shown;
  if (shown?.strength === undefined) return <p role="status" class="example" />;
  return (
    <p role="status" class="example">
      {say("factor.example", {
        reading: writeNumber(shown.reading),
        strength: write(shown.strength),
      })}
    </p>
  );
}

function Known({
  form,
  change,
  fault,
}: Pick<SetupProps, "form" | "change"> & { readonly fault: string | undefined }) {
  return (
    <>
      <TextField
        id="factor"
        label={say("factor.label")}
        text={form.factor}
        fault={fault}
        onText={(factor) => {
          change({ factor });
        }}
      />
      <Example form={form} />
    </>
  );
}

export function FactorStep(props: SetupProps) {
  const { form, change } = props;
  const isKnown = form.hasFactor === "yes";
  const options: readonly Option<"yes" | "no">[] = [
    { value: "yes", word: say("factor.yes") },
    { value: "no", word: say("factor.no"), note: say("factor.no_note") },
  ];
  return (
    <Question
      {...props}
      title={say("factor.title")}
      hint={say("factor.hint")}
      why={say("factor.why")}
      fields={isKnown ? [{ path: "fluid.factor", text: form.factor, unit: "1" }] : []}
      missing={form.hasFactor === "" ? say("error.choose_factor") : null}
    >
      {({ at }) => (
        <>
          <Choice
            name="has-factor"
            labelledBy="question"
            options={options}
            chosen={form.hasFactor}
            onChoose={(hasFactor) => {
              change({ hasFactor });
            }}
          />
          {isKnown ? <Known form={form} change={change} fault={at("fluid.factor")} /> : null}
        </>
      )}
    </Question>
  );
}

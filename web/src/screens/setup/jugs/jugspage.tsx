// Before the jugs are mixed: what is needed, what protects, and how the amounts are measured.
import type { Option } from "../../../elements/fields/choice";
import { lineWord } from "../../../words/codes";
import { unitSign } from "../../../words/numbers";
import { say } from "../../../words/say";
import type { Form } from "../form";
import { Question } from "../frame";
import { withWaterTool, type JugLine, type JugsForm, type MeasuredWith } from "./jugs";
import { ChoicePart } from "../part";
import type { SetupProps } from "../steps";

const WITH: readonly Option<MeasuredWith>[] = (["syringe", "jug"] as const).map((value) => ({
  value,
  word: say(`jugs.with_${value}`),
  note: say(`jugs.with_${value}_note`),
}));

const LINES: readonly Option<JugLine>[] = (["digital", "optical"] as const).map((value) => ({
  value,
  word: lineWord(value),
}));

const STEPS = ["jugs.step_zero", "jugs.step_mix", "jugs.step_spread", "jugs.step_read"] as const;

function missingOf(form: Form): string | null {
  if (form.jugsWith === "") return say("error.jugs_with");
  return form.jugsHow === "" ? say("error.jugs_how") : null;
}

function WaterTool({ form, change }: Pick<SetupProps, "form" | "change">) {
  const { jug, pail } = form.units;
  const options: readonly Option<JugsForm["jugsWater"]>[] = (["jug", "pail"] as const).map(
    (value) => ({ value, word: say(`jugs.water_${value}`, { unit: unitSign(form.units[value]) }) }),
  );
  if (jug === pail) return null;
  return (
    <ChoicePart
      name="jugs-water"
      title={say("jugs.water_tool")}
      options={options}
      chosen={form.jugsWater}
      onChoose={(tool) => {
        change(withWaterTool(form, tool));
      }}
    />
  );
}

/** What protects, and what to do with the jugs. */
function Prepare() {
  return (
    <>
      <section class="cautions">
        <h2>{say("recipe.cautions")}</h2>
        <ul>
          <li>{say("jugs.gloves")}</li>
          <li>{say("jugs.splash")}</li>
        </ul>
        <p>{say("recipe.sheet")}</p>
      </section>
      <section class="question-part">
        <h2>{say("jugs.steps")}</h2>
        <ol class="do-steps">
          {STEPS.map((key) => (
            <li key={key}>{say(key)}</li>
          ))}
        </ol>
      </section>
    </>
  );
}

export function JugsStep(props: SetupProps) {
  const { form, change } = props;
  return (
    <Question
      {...props}
      title={say("jugs.title")}
      hint={say("jugs.hint")}
      why={say("jugs.why")}
      missing={missingOf(form)}
    >
      {() => (
        <>
          <Prepare />
          <ChoicePart
            name="jugs-with"
            title={say("jugs.with")}
            options={WITH}
            chosen={form.jugsWith}
            onChoose={(jugsWith) => {
              change({ jugsWith });
            }}
          />
          <WaterTool form={form} change={change} />
          <ChoicePart
            name="jugs-how"
            title={say("jugs.how")}
            options={LINES}
            chosen={form.jugsHow}
            onChoose={(jugsHow) => {
              change({ jugsHow });
            }}
          />
        </>
      )}
    </Question>
  );
}

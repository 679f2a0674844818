// What the stick does not show: coolant in pipes and filters, and what the pump cannot reach.
import type { Option } from "../../../elements/fields/choice";
import { say } from "../../../words/say";
import type { Form } from "../form";
import { Question } from "../frame";
import { givenOf, NumberRows, type NumberPart } from "../numberrow";
import { ChoicePart } from "../part";
import type { SetupProps } from "../steps";
import { useTogether } from "../together";

const DRAINS: readonly Option<"yes" | "no">[] = (["yes", "no"] as const).map((value) => ({
  value,
  word: say(`drains_back.${value}`),
  note: say(`drains_back.${value}_note`),
}));

function partsOf({ units: { plate }, hiddenVolume }: Form) {
  const volume: NumberPart = {
    part: "hiddenVolume",
    path: "sump.hidden.volume",
    label: say("hidden.volume"),
    hint: say("hidden.volume_hint"),
    unit: plate,
  };
  const u: NumberPart = {
    part: "hiddenU",
    path: "sump.hidden.u",
    label: say("hidden.u"),
    hint: say("hidden.u_hint"),
    unit: plate,
  };
  const rest: NumberPart = {
    part: "rest",
    path: "sump.rest",
    label: say("hidden.rest"),
    hint: say("hidden.rest_hint"),
    unit: plate,
  };
  return { hidden: hiddenVolume.trim() === "" ? [volume] : [volume, u], rest: [rest] };
}

export function HiddenStep(props: SetupProps) {
  const { form, change } = props;
  const { hidden, rest } = partsOf(form);
  const whole = useTogether(form, ["sump.hidden", "sump.rest"]);
  return (
    <Question
      {...props}
      title={say("hidden.title")}
      hint={say("hidden.hint")}
      why={say("hidden.why")}
      fields={givenOf([...hidden, ...rest], form)}
      whole={whole}
    >
      {({ at }) => (
        <>
          <NumberRows parts={hidden} form={form} change={change} at={at} />
          {hidden.length > 1 ? (
            <ChoicePart
              name="drains-back"
              title={say("hidden.drains_back")}
              options={DRAINS}
              chosen={form.drainsBack}
              onChoose={(drainsBack) => {
                change({ drainsBack });
              }}
            />
          ) : null}
          <NumberRows parts={rest} form={form} change={change} at={at} />
        </>
      )}
    </Question>
  );
}

// Which fluid. Neat oil stops here: water in such a machine does harm.
import { Choice, type Option } from "../../../elements/fields/choice";
import { OtherAction } from "../../../elements/buttons";
import { Page } from "../../../elements/page";
import { StateMark } from "../../../elements/statemark";
import { fluidTypeWord } from "../../../words/codes";
import { say } from "../../../words/say";
import type { FluidType } from "../form";
import { Question } from "../frame";
import type { SetupProps } from "../steps";

const TYPES = ["soluble_oil", "semi_synthetic", "synthetic", "neat_oil"] as const;

function NeatOil({ change, place, step }: SetupProps) {
  const again = (): void => {
    change({ fluidType: "" });
  };
  return (
    <Page title={say("neat.title")} place={place} step={step} onBack={again}>
      <section class="plain-page">
        <StateMark state="stop" />
        <p class="plain-lead">{say("neat.reason")}</p>
        <p>{say("neat.ask")}</p>
        <OtherAction onPress={again}>{say("neat.again")}</OtherAction>
      </section>
    </Page>
  );
}

export function FluidStep(props: SetupProps) {
  const { form, change } = props;
  const options: readonly Option<FluidType>[] = TYPES.map((value) => ({
    value,
    word: fluidTypeWord(value),
    note: say(`fluid.${value}_note`),
  }));
  if (form.fluidType === "neat_oil") return <NeatOil {...props} />;
  return (
    <Question
      {...props}
      title={say("fluid.title")}
      hint={say("fluid.hint")}
      why={say("fluid.why")}
      missing={form.fluidType === "" ? say("error.choose_fluid") : null}
    >
      {() => (
        <>
          <Choice
            name="fluid-type"
            labelledBy="question"
            options={options}
            chosen={form.fluidType}
            onChoose={(fluidType) => {
              change({ fluidType });
            }}
          />
        </>
      )}
    </Question>
  );
}

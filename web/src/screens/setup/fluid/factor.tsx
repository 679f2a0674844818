// The factor with its direction, shown back as what a mix of 5 % reads: some sheets divide where others
// multiply, and some print a chart.
import { PlaceLink } from "../../../elements/buttons";
import { Choice, type Option } from "../../../elements/fields/choice";
import { Remarks } from "../../../elements/remarks";
import { write } from "../../../words/numbers";
import { say } from "../../../words/say";
import { useResult } from "../../core";
import { askedOfChart, ChartRows } from "./chart";
import type { Form } from "../form";
import { Question, type Asked, type Faults } from "../frame";
import { NumberRows, type NumberPart } from "../numberrow";
import { isEmptyPair, NOT_FOUND, type Way } from "./record";
import type { SetupProps } from "../steps";
import { fluidBody, useFluidTogether, useNow } from "./together";

type Answer = Way | "no";

const OPTIONS: readonly Option<Answer>[] = (["multiply", "divide", "chart", "no"] as const).map(
  (value) => ({ value, word: say(`factor.${value}`), note: say(`factor.${value}_note`) }),
);

function partOf(way: "multiply" | "divide"): NumberPart {
  return {
    part: "factor",
    path: "fluid.factor",
    label: say(`factor.${way}_label`),
    unit: "1",
    quantity: way === "divide" ? "factor_divide" : "factor",
  };
}

function chosenOf({ hasFactor, factorWay }: Form): Answer | "" {
  return hasFactor === "no" ? "no" : hasFactor === "yes" ? factorWay : "";
}

function isGiven(form: Form): boolean {
  if (form.hasFactor !== "yes") return false;
  if (form.factorWay === "chart") return form.chart.some((row) => !isEmptyPair(row));
  return form.factorWay !== "" && form.factor.trim() !== "";
}

/** What a mix of 5 % reads on this instrument: a factor the wrong way round is seen at once. */
function Said({ form }: { readonly form: Form }) {
  const now = useNow();
  const body = isGiven(form) ? fluidBody({ ...form, fluidRest: {}, zeroOn: "" }, now) : null;
  const shown = useResult("read_fluid", body)?.shown;
  const reads = shown?.five_reads;
  const texts = [
    ...(reads === undefined ? [] : [say("factor.five_reads", { reading: write(reads) })]),
    ...(form.factorWay === "divide" && shown?.factor !== undefined
      ? [say("factor.as_multiplied", { factor: write(shown.factor) })]
      : []),
    ...(form.glassShows === "per_cent" ? [say("instrument.once")] : []),
  ];
  return <Remarks texts={texts} />;
}

function Known({ form, change, at }: Pick<SetupProps, "form" | "change"> & Faults) {
  const { hasFactor, factorWay: way } = form;
  if (hasFactor !== "yes" || way === "") return null;
  const put = (part: Partial<Form>): void => {
    change({ ...part, ...NOT_FOUND });
  };
  return (
    <>
      {way === "chart" ? (
        <ChartRows form={form} change={put} at={at} />
      ) : (
        <NumberRows parts={[partOf(way)]} form={form} change={put} at={at} />
      )}
      <Said form={form} />
    </>
  );
}

function fieldsOf(form: Form): readonly Asked[] {
  const { hasFactor, factorWay: way, factor: text } = form;
  if (hasFactor !== "yes" || way === "") return [];
  if (way === "chart") return askedOfChart(form);
  const { path, unit, quantity = "" } = partOf(way);
  return [{ path, text, unit, quantity }];
}

function missingOf(form: Form): string | null {
  if (chosenOf(form) === "") return say("error.choose_factor");
  return form.factorWay === "chart" && form.hasFactor === "yes" && !isGiven(form)
    ? say("error.chart_empty")
    : null;
}

function useChoosing({ form, change }: Pick<SetupProps, "form" | "change">) {
  return (answer: Answer): void => {
    if (answer === "no") change({ hasFactor: "no" });
    else if (answer === form.factorWay) change({ hasFactor: "yes" });
    else change({ hasFactor: "yes", factorWay: answer, ...NOT_FOUND });
  };
}

export function FactorStep(props: SetupProps) {
  const { form, change, to } = props;
  const choose = useChoosing(props);
  const whole = useFluidTogether(form, ["fluid.factor", "instrument.factor_inside"]);
  return (
    <Question
      {...props}
      title={say("factor.title")}
      hint={say("factor.hint")}
      why={say("factor.why")}
      fields={fieldsOf(form)}
      whole={isGiven(form) ? whole : undefined}
      missing={missingOf(form)}
    >
      {({ at }) => (
        <>
          <Choice
            name="has-factor"
            labelledBy="question"
            options={OPTIONS}
            chosen={chosenOf(form)}
            onChoose={choose}
          />
          <Known form={form} change={change} at={at} />
          <PlaceLink to={to("jugs")}>{say("factor.find")}</PlaceLink>
        </>
      )}
    </Question>
  );
}

// The highest marks: how deep a dip can be at all, and what may not be passed with the pump stopped.
import { EmptySump } from "../../../elements/drawings/emptysump";
import { say } from "../../../words/say";
import { useCore } from "../../core";
import { checkOf } from "../../gate";
import type { Form } from "../form";
import { Question } from "../frame";
import { givenOf, NumberRows, type NumberPart } from "../numberrow";
import type { SetupProps } from "../steps";
import { sumpOf } from "./tank";

/** The last row of a table is its rim already. */
function partsOf({ kind, units: { stick } }: Form): readonly NumberPart[] {
  const never: NumberPart = {
    part: "neverAbove",
    path: "sump.never_above_depth",
    label: say("rim.never_above"),
    hint: say("rim.never_above_hint"),
    unit: stick,
  };
  if (kind === "table") return [never];
  return [
    { part: "rimDepth", path: "sump.rim_depth", label: say("rim.label"), unit: stick },
    never,
  ];
}

export function RimStep(props: SetupProps) {
  const { form, change } = props;
  const core = useCore();
  const parts = partsOf(form);
  return (
    <Question
      {...props}
      title={say(form.kind === "table" ? "rim.table_title" : "rim.title")}
      hint={say("rim.hint")}
      why={say(form.kind === "table" ? "rim.table_why" : "rim.why")}
      fields={givenOf(parts, form)}
      whole={() => core.ask("assess_sump", { sump: sumpOf(form) }).then(checkOf)}
    >
      {({ at }) => (
        <>
          <NumberRows parts={parts} form={form} change={change} at={at} />
          <EmptySump />
        </>
      )}
    </Question>
  );
}

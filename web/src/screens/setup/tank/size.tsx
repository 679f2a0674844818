// The measures of the tank and its full mark, in the way this sump is known.
import type { Option } from "../../../elements/fields/choice";
import { ToolDrawing } from "../../../elements/drawings/tools";
import { dippedEndWord } from "../../../words/codes";
import { say } from "../../../words/say";
import { useCore } from "../../core";
import { checkOf } from "../../gate";
import { BoxRows } from "./boxes";
import { Question } from "../frame";
import { askedOf, NumberRows } from "../numberrow";
import { ChoicePart } from "../part";
import { PointRows } from "./points";
import { Preview } from "./preview";
import { rowsAsked, sizeParts } from "./sizeparts";
import type { SetupProps } from "../steps";
import { shapeOf, type DippedEnd } from "./tank";

const ENDS: readonly Option<DippedEnd>[] = [
  {
    value: "deep",
    word: dippedEndWord("deep"),
    drawing: <ToolDrawing tool="deep_end" />,
  },
  {
    value: "shallow",
    word: dippedEndWord("shallow"),
    drawing: <ToolDrawing tool="shallow_end" />,
  },
];

export function SizeStep(props: SetupProps) {
  const { form, change } = props;
  const core = useCore();
  // Marks, things and the stick come later; only this page's own numbers are looked at together.
  const sump = shapeOf(form);
  const { kind } = sump;
  const parts = sizeParts(form);
  const needsEnd = kind === "sloped_box" && form.dippedEnd === "";
  return (
    <Question
      {...props}
      title={say(`size.${kind}_title`)}
      hint={say(`size.${kind}_hint`)}
      why={say("size.why")}
      fields={[...askedOf(parts, form), ...rowsAsked(form)]}
      whole={() => core.ask("assess_sump", { sump }).then(checkOf)}
      missing={needsEnd ? say("error.dipped_end") : null}
    >
      {({ at }) => (
        <>
          {kind === "stepped" ? <BoxRows form={form} change={change} at={at} /> : null}
          <NumberRows parts={parts} form={form} change={change} at={at} />
          {kind === "table" ? <PointRows form={form} change={change} at={at} /> : null}
          {kind === "sloped_box" ? (
            <ChoicePart
              name="dipped-end"
              title={say("size.dipped_end")}
              options={ENDS}
              chosen={form.dippedEnd}
              onChoose={(dippedEnd) => {
                change({ dippedEnd });
              }}
            />
          ) : null}
          <Preview sump={sump} units={form.units} />
        </>
      )}
    </Question>
  );
}

// How a depth becomes litres: three ways that most sumps need, and more shapes below them.
import { PlaceLink } from "../../../elements/buttons";
import { Choice, type Option } from "../../../elements/fields/choice";
import { ToolDrawing, type Tool } from "../../../elements/drawings/tools";
import { kindWord } from "../../../words/codes";
import { say, type Key } from "../../../words/say";
import type { Kind } from "../form";
import { Question } from "../frame";
import type { SetupProps } from "../steps";
import { isMeasured } from "./tank";

const option = (value: Kind, tool: Tool, note: Key): Option<Kind> => ({
  value,
  word: kindWord(value),
  note: say(note),
  drawing: <ToolDrawing tool={tool} />,
});

const USUAL: readonly Option<Kind>[] = [
  option("proportional", "level", "litres.proportional_note"),
  option("box", "box", "litres.box_note"),
  option("table", "table", "litres.table_note"),
];

const SHAPES: readonly Option<Kind>[] = [
  option("sloped_box", "sloped", "litres.sloped_box_note"),
  option("stepped", "stepped", "litres.stepped_note"),
  option("upright_cylinder", "standing", "litres.upright_cylinder_note"),
  option("horizontal_cylinder", "lying", "litres.horizontal_cylinder_note"),
  option("frustum", "cone", "litres.frustum_note"),
];

export function LitresStep(props: SetupProps) {
  const { form, change, to } = props;
  const choose = (kind: Kind): void => {
    // A volume worked out from sides has none without them.
    const lost = form.knownBy === "measured" && !isMeasured(kind);
    change({ kind, ...(lost ? { knownBy: "" } : {}) });
  };
  const group = { name: "kind", chosen: form.kind, onChoose: choose };
  return (
    <Question
      {...props}
      title={say("litres.title")}
      hint={say("litres.hint")}
      why={say("litres.why")}
      missing={form.kind === "" ? say("error.choose") : null}
    >
      {() => (
        <>
          <Choice {...group} labelledBy="question" options={USUAL} />
          <section class="question-part">
            <h2>{say("pours.way_title")}</h2>
            <p class="note">{say("pours.way_note")}</p>
            <PlaceLink to={to("pours")}>{say("pours.open")}</PlaceLink>
          </section>
          <section class="question-part">
            <h2 id="more-shapes">{say("litres.more")}</h2>
            <Choice {...group} labelledBy="more-shapes" options={SHAPES} />
          </section>
        </>
      )}
    </Question>
  );
}

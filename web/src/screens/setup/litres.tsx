import { Choice, type Option } from "../../elements/choice";
import { ToolDrawing } from "../../elements/tools";
import { kindWord } from "../../words/codes";
import { say } from "../../words/say";
import type { Kind } from "./form";
import { Question } from "./frame";
import type { SetupProps } from "./steps";

export function LitresStep(props: SetupProps) {
  const { form, change } = props;
  const options: readonly Option<Kind>[] = [
    {
      value: "proportional",
      word: kindWord("proportional"),
      note: say("litres.proportional_note"),
      drawing: <ToolDrawing tool="level" />,
    },
    {
      value: "box",
      word: kindWord("box"),
      note: say("litres.box_note"),
      drawing: <ToolDrawing tool="box" />,
    },
    {
      value: "table",
      word: kindWord("table"),
      note: say("litres.table_note"),
      drawing: <ToolDrawing tool="table" />,
    },
  ];
  const choose = (kind: Kind): void => {
    change({ kind });
  };
  return (
    <Question
      {...props}
      title={say("litres.title")}
      hint={say("litres.hint")}
      why={say("litres.why")}
      missing={form.kind === "" ? say("error.choose") : null}
    >
      {() => (
        <Choice
          name="kind"
          labelledBy="question"
          options={options}
          chosen={form.kind}
          onChoose={choose}
        />
      )}
    </Question>
  );
}

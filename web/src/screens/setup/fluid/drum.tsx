import { TextField } from "../../../elements/fields/textfield";
import { ToolDrawing } from "../../../elements/drawings/tools";
import { say } from "../../../words/say";
import { Question } from "../frame";
import type { SetupProps } from "../steps";

const LONGEST = 80;

export function DrumStep(props: SetupProps) {
  const { form, change } = props;
  const isLong = form.fluidName.trim().length > LONGEST;
  return (
    <Question
      {...props}
      title={say("drum.title")}
      hint={say("drum.hint")}
      why={say("drum.why")}
      missingAt="fluid.name"
      missing={isLong ? say("error.name_long", { most: String(LONGEST) }) : null}
    >
      {({ at }) => (
        <>
          <TextField
            id="fluid-name"
            label={say("drum.label")}
            number={false}
            fault={at("fluid.name")}
            text={form.fluidName}
            onText={(fluidName) => {
              change({ fluidName });
            }}
          />
          <div class="picture">
            <ToolDrawing tool="drum" />
          </div>
        </>
      )}
    </Question>
  );
}

import { TextField } from "../../elements/fields/textfield";
import { EmptySump } from "../../elements/drawings/emptysump";
import { say } from "../../words/say";
import { Question } from "./frame";
import type { SetupProps } from "./steps";

const LONGEST = 80;

function faultOf(name: string): string | null {
  if (name.trim() === "") return say("error.name_empty");
  return name.trim().length > LONGEST ? say("error.name_long", { most: String(LONGEST) }) : null;
}

export function NameStep(props: SetupProps) {
  const { form, change } = props;
  return (
    <Question
      {...props}
      title={say("name.title")}
      hint={say("name.hint")}
      why={say("name.why")}
      missingAt="name"
      missing={faultOf(form.name)}
    >
      {({ at }) => (
        <>
          <TextField
            id="name"
            label={say("name.label")}
            number={false}
            fault={at("name")}
            text={form.name}
            onText={(name) => {
              change({ name });
            }}
          />
          <EmptySump />
        </>
      )}
    </Question>
  );
}

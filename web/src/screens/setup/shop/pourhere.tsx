// Where buckets are poured in at this machine: shown before the first bucket, to whoever pours.
import { PourHere } from "../../../elements/drawings/pourhere";
import { TextField } from "../../../elements/fields/textfield";
import { say } from "../../../words/say";
import { Question } from "../frame";
import type { SetupProps } from "../steps";

/** The contract's own limit. */
const LONGEST = 120;

export function PourHereStep(props: SetupProps) {
  const { form, change } = props;
  const isLong = form.pourHere.trim().length > LONGEST;
  return (
    <Question
      {...props}
      title={say("pour_here.title")}
      hint={say("pour_here.hint")}
      why={say("pour_here.why")}
      missingAt="pour_here"
      missing={isLong ? say("error.text_long", { most: String(LONGEST) }) : null}
    >
      {({ at }) => (
        <>
          <PourHere divided={form.divided === "yes"} />
          <TextField
            id="pour-here"
            label={say("pour_here.label")}
            hint={say("pour_here.example")}
            number={false}
            fault={at("pour_here")}
            text={form.pourHere}
            onText={(pourHere) => {
              change({ pourHere });
            }}
          />
        </>
      )}
    </Question>
  );
}

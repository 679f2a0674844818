// What was measured beside the look; each field may stay empty.
import type { DeskError } from "../../../core/messages";
import { MainAction } from "../../../elements/buttons";
import { Page } from "../../../elements/page";
import { TextField } from "../../../elements/textfield";
import { changeLook, isMeasured, judgeBody, lookOf } from "../../../store/looks";
import { warmthUnit } from "../../../store/walk";
import { errorSentence } from "../../../words/errors";
import { say } from "../../../words/say";
import { useAnswer } from "../../core";
import { back } from "../../route";
import type { LookProps } from "./screen";

const FIELDS = [
  { part: "ph", path: "body.ph", unit: "1" },
  { part: "nitrite", path: "body.nitrite", unit: "mg/L" },
  { part: "germs", path: "body.dip_slide", unit: "CFU/mL" },
  { part: "warmth", path: "body.temperature", unit: "" },
] as const;

export function MeasuredScreen({ machine }: LookProps) {
  const id = machine.machine;
  const typed = machine.body.machine;
  const look = lookOf(id).value;
  const warmth = warmthUnit(typed);
  const body = judgeBody(typed, { ...look, seen: [], again: "" }, warmth);
  const answer = useAnswer("judge_look", isMeasured(look) ? body : null);
  const error: DeskError | null = answer?.kind === "error" ? answer.error : null;
  return (
    <Page
      title={say("look.measured_title")}
      place={typed.name}
      onBack={() => {
        back("machines", id, "look");
      }}
      action={
        <MainAction
          onPress={() => {
            if (error === null) back("machines", id, "look");
          }}
        >
          {say("go_on")}
        </MainAction>
      }
    >
      <p class="note">{say("look.measured_hint")}</p>
      {FIELDS.map(({ part, path, unit }) => (
        <TextField
          key={part}
          id={part}
          label={say(`look.${part}`)}
          unit={unit === "" ? warmth : unit}
          text={look[part]}
          fault={
            error?.path.startsWith(path) === true
              ? errorSentence(error, say(`field.${part}`))
              : undefined
          }
          onText={(text) => {
            changeLook(id, { [part]: text });
          }}
        />
      ))}
    </Page>
  );
}

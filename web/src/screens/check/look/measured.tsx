// What was measured beside the look; each field may stay empty.
import type { DeskError } from "../../../core/messages";
import { MainAction } from "../../../elements/buttons";
import { Page } from "../../../elements/page";
import { TextField } from "../../../elements/fields/textfield";
import {
  changeLook,
  isMeasured,
  judgeBody,
  lookOf,
  type Look,
} from "../../../store/underway/looks";
import { warmthUnit } from "../../../store/underway/walk";
import { errorSentence } from "../../../words/errors";
import { say, type Key } from "../../../words/say";
import { useAnswer } from "../../core";
import { back } from "../../route";
import { useLookBack } from "../lookback";
import { Earlier } from "./earlier";
import { isOfLimits, LimitsFault } from "./limitsfault";
import type { LookProps } from "./screen";

const FIELDS = [
  { part: "ph", path: "body.ph", unit: "1" },
  { part: "nitrite", path: "body.nitrite", unit: "mg/L" },
  { part: "germs", path: "body.dip_slide", unit: "CFU/mL" },
  { part: "warmth", path: "body.temperature", unit: "" },
] as const;

function faultOf(error: DeskError | null, path: string, name: Key): string | undefined {
  return error?.path.startsWith(path) === true ? errorSentence(error, say(name)) : undefined;
}

interface FieldsProps {
  readonly id: string;
  readonly look: Look;
  readonly warmth: ReturnType<typeof warmthUnit>;
  readonly error: DeskError | null;
}

function Fields({ id, look, warmth, error }: FieldsProps) {
  return (
    <>
      {FIELDS.map(({ part, path, unit }) => (
        <TextField
          key={part}
          id={part}
          label={say(`look.${part}`)}
          unit={unit === "" ? warmth : unit}
          text={look[part]}
          fault={faultOf(error, path, `field.${part}`)}
          onText={(text) => {
            changeLook(id, { [part]: text });
          }}
        />
      ))}
    </>
  );
}

export function MeasuredScreen({ machine }: LookProps) {
  const id = machine.machine;
  const typed = machine.body.machine;
  const look = lookOf(id).value;
  const warmth = warmthUnit(typed);
  const before = useLookBack(machine);
  const earlier = before?.kind === "ok" ? before.result : null;
  const body = judgeBody(typed, { ...look, seen: [], again: "", foamFrom: "" }, warmth, earlier);
  const answer = useAnswer(
    "judge_look",
    isMeasured(look) || look.firstPh.trim() !== "" ? body : null,
  );
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
            // The advice says it too; what was measured here is right.
            if (error === null || isOfLimits(error)) back("machines", id, "look");
          }}
        >
          {say("go_on")}
        </MainAction>
      }
    >
      <p class="note">{say("look.measured_hint")}</p>
      {error !== null && isOfLimits(error) ? <LimitsFault error={error} /> : null}
      <Fields id={id} look={look} warmth={warmth} error={error} />
      <Earlier
        id={id}
        look={look}
        earlier={earlier}
        fault={faultOf(error, "body.first_fill_ph", "look.first_ph_label")}
      />
    </Page>
  );
}

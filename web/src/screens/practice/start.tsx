// The beginning of practice: how hard, when to compare, and which sump where one is wanted again.
import { useState } from "preact/hooks";
import type { DeskError, PracticeLevel } from "../../core/messages";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Choice } from "../../elements/fields/choice";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { TextField } from "../../elements/fields/textfield";
import {
  beginPractice,
  drawNumber,
  LEVELS,
  practice,
  type Mode,
} from "../../store/underway/practice";
import { errorSentence } from "../../words/errors";
import { say } from "../../words/say";
import { useCore } from "../core";
import { CoreTrouble } from "../foot";
import { address, back, go } from "../route";

const MODES = ["each", "end"] as const;

interface Wanted {
  readonly level: PracticeLevel;
  readonly mode: Mode;
  readonly number: string;
}

/** Asks for the sump before the page leaves: a number that is not dealt stays where it was typed. */
function useDeal(wanted: Wanted) {
  const core = useCore();
  const [error, setError] = useState<DeskError | null>(null);
  const [isDown, setDown] = useState(false);
  const press = async (): Promise<void> => {
    const number = wanted.number.trim() === "" ? drawNumber() : wanted.number;
    const body = { level: wanted.level, number: { text: number, unit: "1" as const } };
    const answer = await core.ask("deal_practice", body, "deal");
    setError(answer.kind === "error" ? answer.error : null);
    setDown(answer.kind === "down");
    if (answer.kind !== "ok") return;
    beginPractice(wanted.level, String(answer.result.number), wanted.mode);
    go("practice", answer.result.steps[0] ?? "volume");
  };
  return { error, isDown, press };
}

function Levels({
  level,
  onLevel,
}: {
  readonly level: PracticeLevel;
  readonly onLevel: (level: PracticeLevel) => void;
}) {
  return (
    <>
      <h2 id="practice-level">{say("practice.level")}</h2>
      <Choice
        name="level"
        labelledBy="practice-level"
        options={LEVELS.map((value) => ({
          value,
          word: say(`practice.level_${value}`),
          note: say(`practice.level_${value}_note`),
        }))}
        chosen={level}
        onChoose={onLevel}
      />
    </>
  );
}

export function StartScreen() {
  const before = practice.value;
  const [level, setLevel] = useState<PracticeLevel>(before?.level ?? "alike");
  const [mode, setMode] = useState<Mode>(before?.mode ?? "each");
  const [number, setNumber] = useState("");
  const { error, isDown, press } = useDeal({ level, mode, number });
  return (
    <Page
      title={say("practice.title")}
      place={say("learn.title")}
      onBack={() => {
        back("learn");
      }}
      action={
        <MainAction onPress={() => void press()} about={number + level}>
          {say("practice.deal")}
        </MainAction>
      }
    >
      <p>{say("practice.intro")}</p>
      {before === null ? null : (
        <PlaceLink to={address("practice", before.at)}>
          {say("practice.go_on", { number: before.number })}
        </PlaceLink>
      )}
      <Levels level={level} onLevel={setLevel} />
      <h2 id="practice-mode">{say("practice.mode")}</h2>
      <Choice
        name="mode"
        labelledBy="practice-mode"
        options={MODES.map((value) => ({ value, word: say(`practice.mode_${value}`) }))}
        chosen={mode}
        onChoose={setMode}
      />
      <TextField
        id="practice-number"
        label={say("practice.deal_number")}
        hint={say("practice.deal_number_hint")}
        text={number}
        fault={error === null ? undefined : errorSentence(error, say("practice.field_number"))}
        onText={setNumber}
      />
      {isDown ? <Fault>{say("practice.down")}</Fault> : null}
      <CoreTrouble />
    </Page>
  );
}

// The entry of a mishap, and the state of the machine that goes with it. What fits comes from the table;
// where pycore does not answer, a note can be written all the same.
import { useState } from "preact/hooks";
import type { AdviseMishapResult, MachineStateContent } from "../../core/messages";
import { Choice } from "../../elements/fields/choice";
import { TextField } from "../../elements/fields/textfield";
import { statedOf } from "../../store/log/machines";
import { shiftStateWord, toldKindWord } from "../../words/codes";
import { say, startLarge } from "../../words/say";
import { ToldForm } from "../told/form";
import { stateWords } from "../told/stated";
import { NameField, nameOf, UntilField, untilOf } from "../told/tagfields";
import { useTelling, type Said, type Telling } from "../told/telling";
import { useAdvice } from "./advice";
import type { Mishap, MishapProps } from "./screen";

const STATES = ["stopped", "on_hold", "watch", "leave"] as const;
type Next = (typeof STATES)[number];

/** What happened under its name, with what somebody typed about it. */
function saidOf(mishap: Mishap, kind: AdviseMishapResult["record"], text: string): Said {
  const name = say(`mishap.${mishap}`);
  const words = text === "" ? name : say("mishap.note", { name, text });
  if (kind === "additive") return { kind, body: { name: say("mishap.cleaner"), remarks: words } };
  if (kind === "unknown_addition")
    return {
      kind,
      body: { what: mishap === "neat_poured" ? "concentrate" : "unknown", remarks: words },
    };
  return { kind, body: { text: words } };
}

function stateOf(
  next: Next,
  reason: MachineStateContent["reason"],
  telling: Telling,
): Said | undefined {
  // At the machine the state is read, not the entry beside it.
  const remarks = telling.text("text").trim();
  if (next === "leave") return undefined;
  return {
    kind: "machine_state",
    body: {
      state: next,
      ...(reason === undefined ? {} : { reason }),
      ...(next === "on_hold" ? untilOf(telling) : {}),
      ...(remarks === "" ? {} : { remarks }),
    },
  };
}

function offered(advice: AdviseMishapResult | null): Next {
  return STATES.find((state) => state === advice?.state) ?? "leave";
}

interface NextProps {
  readonly id: string;
  readonly next: Next;
  readonly telling: Telling;
}

function NextState({ id, next, telling }: NextProps) {
  const stated = statedOf(id);
  const now = stated === undefined ? startLarge(shiftStateWord("in_use")) : stateWords(stated);
  return (
    <>
      <h2 id="wrong-state">{say("mishap.machine")}</h2>
      <Choice
        name="state"
        labelledBy="wrong-state"
        options={STATES.map((value) =>
          value === "leave"
            ? {
                value,
                word: say("mishap.leave"),
                note: say("mishap.leave_note", { state: now }),
              }
            : {
                value,
                word: startLarge(shiftStateWord(value)),
                note: say(`tell.about_${value}`),
              },
        )}
        chosen={next}
        onChoose={(value) => {
          telling.change("state", value);
        }}
      />
    </>
  );
}

export function RecordScreen(props: MishapProps) {
  const { machine, mishap } = props;
  const id = machine.machine;
  const telling = useTelling(id, `wrong.${mishap}`);
  const [asked, setAsked] = useState(false);
  const answer = useAdvice(props);
  const advice = answer?.kind === "ok" ? answer.result : null;
  const next = STATES.find((state) => state === telling.text("state")) ?? offered(advice);
  const by = nameOf(telling);
  const record = advice?.record ?? "note";
  const said = saidOf(mishap, record, telling.text("text").trim());
  return (
    <ToldForm
      title="mishap.record"
      machine={machine}
      telling={telling}
      by={by}
      said={by === "" ? null : said}
      also={stateOf(next, advice?.reason, telling)}
      parent={["wrong", mishap]}
      onMissing={() => {
        setAsked(true);
      }}
    >
      <h2>{say(`mishap.${mishap}`)}</h2>
      <TextField
        id="wrong-text"
        label={say("mishap.what")}
        number={false}
        text={telling.text("text")}
        onText={(text) => {
          telling.change("text", text);
        }}
      />
      <p class="note">{say("mishap.record_text", { kind: toldKindWord(record) })}</p>
      <NextState id={id} next={next} telling={telling} />
      {next === "on_hold" ? <UntilField telling={telling} /> : null}
      <NameField telling={telling} fault={asked && by === ""} />
    </ToldForm>
  );
}

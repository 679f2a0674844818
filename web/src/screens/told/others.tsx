// Poured by somebody, an additive, a note: what is told in a few words.
import { useState } from "preact/hooks";
import { Choice } from "../../elements/fields/choice";
import { Select } from "../../elements/fields/select";
import { TextField } from "../../elements/fields/textfield";
import type { MachineEntry } from "../../store/log/entry";
import { toldWhatWord } from "../../words/codes";
import { say, type Key } from "../../words/say";
import { RemarksField, remarksOf, ToldForm } from "./form";
import { useTelling, type Telling } from "./telling";

export const WHATS = ["water", "mix", "concentrate", "unknown"] as const;
const AMOUNT_UNITS = ["mL", "L", "kg"] as const;

export function TellUnknown({ machine }: { readonly machine: MachineEntry }) {
  const telling = useTelling(machine.machine, "unknown");
  const what = WHATS.find((one) => one === telling.text("what")) ?? "unknown";
  return (
    <ToldForm
      title="tell.unknown"
      machine={machine}
      telling={telling}
      said={{ kind: "unknown_addition", body: { what, ...remarksOf(telling) } }}
    >
      <p>{say("tell.unknown_text")}</p>
      <h2 id="told-what">{say("tell.what_it_was")}</h2>
      <Choice
        name="what"
        labelledBy="told-what"
        options={WHATS.map((value) => ({ value, word: toldWhatWord(value) }))}
        chosen={what}
        onChoose={(value) => {
          telling.change("what", value);
        }}
      />
      <RemarksField telling={telling} />
    </ToldForm>
  );
}

interface WordsProps {
  readonly telling: Telling;
  readonly name: string;
  readonly label: Key;
  readonly fault?: boolean;
}

function Words({ telling, name, label, fault = false }: WordsProps) {
  return (
    <TextField
      id={`told-${name}`}
      label={say(label)}
      number={false}
      text={telling.text(name)}
      fault={fault ? say("tell.empty") : undefined}
      onText={(text) => {
        telling.change(name, text);
      }}
    />
  );
}

export function TellAdditive({ machine }: { readonly machine: MachineEntry }) {
  const telling = useTelling(machine.machine, "additive");
  const [asked, setAsked] = useState(false);
  const [name, amount, agreed] = ["name", "amount", "agreed"].map((n) => telling.text(n).trim());
  const unit = AMOUNT_UNITS.find((one) => one === telling.text("unit")) ?? "mL";
  const body = {
    name: name ?? "",
    ...(amount === "" || amount === undefined ? {} : { amount: { text: amount, unit } }),
    ...(agreed === "" || agreed === undefined ? {} : { agreed_with: agreed }),
    ...remarksOf(telling),
  };
  return (
    <ToldForm
      title="tell.additive"
      machine={machine}
      telling={telling}
      said={name === "" ? null : { kind: "additive", body }}
      onMissing={() => {
        setAsked(true);
      }}
    >
      <p>{say("tell.additive_text")}</p>
      <Words telling={telling} name="name" label="tell.name" fault={asked && name === ""} />
      <TextField
        id="told-amount"
        label={say("tell.amount")}
        text={telling.text("amount")}
        onText={(text) => {
          telling.change("amount", text);
        }}
      />
      <Select
        id="told-unit"
        label={say("tell.unit")}
        value={unit}
        options={AMOUNT_UNITS.map((value) => ({ value, word: value }))}
        onChoose={(value) => {
          telling.change("unit", value);
        }}
      />
      <Words telling={telling} name="agreed" label="told.agreed" />
      <RemarksField telling={telling} />
    </ToldForm>
  );
}

/** Of one machine, or of the whole shop. */
export function TellNote({ machine }: { readonly machine: MachineEntry | null }) {
  const telling = useTelling(machine?.machine ?? "", "note");
  const [asked, setAsked] = useState(false);
  const text = telling.text("text").trim();
  return (
    <ToldForm
      title="tell.note"
      machine={machine}
      telling={telling}
      said={text === "" ? null : { kind: "note", body: { text } }}
      onMissing={() => {
        setAsked(true);
      }}
    >
      <p>{say("tell.note_text")}</p>
      <Words telling={telling} name="text" label="tell.note" fault={asked && text === ""} />
    </ToldForm>
  );
}

// One field, asked as it was at first: empty, with what stands in the log beside it, and the same gates.
import { useState } from "preact/hooks";
import { MainAction, SideAction } from "../../elements/buttons";
import { Answers } from "../../elements/fields/choice";
import { Fault } from "../../elements/fault";
import { Keypad } from "../../elements/fields/keypad";
import { NumberField } from "../../elements/fields/numberfield";
import { Page } from "../../elements/page";
import { TextField } from "../../elements/fields/textfield";
import { Ticks } from "../../elements/fields/ticks";
import { errorSentence } from "../../words/errors";
import { say, startLarge } from "../../words/say";
import { DepthPad } from "../check/dip/depthpad";
import { GaugePad } from "../check/dip/gaugepad";
import { ALL } from "../check/look/screen";
import { MeasureDoubt } from "../check/measuredoubt";
import { useCore } from "../core";
import { emptyError, useGate } from "../gate";
import { back } from "../route";
import { askField } from "./asked";
import { contentWith, joined, partsOf, textOf } from "./content";
import { changeDraft } from "./draft";
import type { Field } from "./fields";
import { placeName, type CorrectProps } from "./screen";
import { writeText } from "./written";

interface FieldProps extends CorrectProps {
  readonly field: Field;
}

/** What is typed is kept at every key; the list of fields reads it from there. */
function useField({ entry, fields, before, draft, field }: FieldProps) {
  const core = useCore();
  const text = draft.texts[field.name] ?? "";
  const change = (next: string): void => {
    changeDraft(entry.id, { texts: { ...draft.texts, [field.name]: next } });
  };
  const done = (): void => {
    back("log", entry.id, "correct");
  };
  const content = contentWith(before, fields, draft.texts);
  const gate = useGate({
    plain: text.trim() === "" ? [emptyError(`body.${field.name}`)] : [],
    look: () => askField(core, entry, content, field, text),
    kept: draft.kept,
    onKept: (kept) => {
      changeDraft(entry.id, { kept });
    },
    onPass: done,
    about: text,
  });
  return { text, change, done, gate };
}

type Asked = ReturnType<typeof useField>;

/** Away without an answer: what was typed here is forgotten, and the log's value stays. */
function leave({ entry, draft, field }: FieldProps): void {
  const texts = Object.fromEntries(
    Object.entries(draft.texts).filter(([name]) => name !== field.name),
  );
  changeDraft(entry.id, { texts });
  back("log", entry.id, "correct");
}

function NotGiven({ props, asked }: { readonly props: FieldProps; readonly asked: Asked }) {
  const { field, before } = props;
  if (!field.isOptional || textOf(before, field) === "") return null;
  return (
    <SideAction
      onPress={() => {
        asked.change("");
        asked.done();
      }}
    >
      {say(field.kind === "count" ? "amend.none_poured" : "facts.not_given")}
    </SideAction>
  );
}

function Frame({
  props,
  asked,
  children,
}: {
  readonly props: FieldProps;
  readonly asked: Asked;
  readonly children: preact.ComponentChildren;
}) {
  const { entry, field, before } = props;
  const { gate } = asked;
  const [error] = gate.errors;
  return (
    <Page
      title={say("amend.right", { field: field.label })}
      place={placeName(entry)}
      layout={field.kind === "number" || field.kind === "count" ? "question" : "plain"}
      side={<NotGiven props={props} asked={asked} />}
      onBack={() => {
        leave(props);
      }}
      action={
        gate.doubt === null && field.kind !== "choice" ? (
          <MainAction onPress={gate.pass} about={asked.text}>
            {say("go_on")}
          </MainAction>
        ) : undefined
      }
    >
      <p id="hint">{say("amend.stands", { value: writeText(field, textOf(before, field)) })}</p>
      {error === undefined ? null : <Fault>{errorSentence(error, field.label)}</Fault>}
      {children}
    </Page>
  );
}

function Keys({ field, asked }: { readonly field: Field; readonly asked: Asked }) {
  const { text, change } = asked;
  const [parts, setParts] = useState(false);
  if (field.kind === "count") return <Keypad text={text} sign="whole" onText={change} />;
  if (!field.name.startsWith("dip.") && field.name !== "fill_to_depth")
    return <Keypad text={text} sign="decimal" onText={change} />;
  return (
    <>
      {field.unit === "in" ? (
        <button
          type="button"
          class="other-action"
          onClick={() => {
            setParts(!parts);
          }}
        >
          {say(parts ? "dip.to_whole" : "dip.to_parts")}
        </button>
      ) : null}
      <DepthPad unit={field.unit} text={text} parts={parts} onText={change} />
    </>
  );
}

function NumberPage({ props, asked }: { readonly props: FieldProps; readonly asked: Asked }) {
  const { field } = props;
  const { gate } = asked;
  return (
    <Frame props={props} asked={asked}>
      <NumberField
        labelledBy="question"
        describedBy="hint"
        text={asked.text}
        unit={field.unit}
        faulty={gate.errors.length > 0}
        onText={asked.change}
        onEnter={gate.pass}
      />
      {gate.doubt === null ? (
        <Keys field={field} asked={asked} />
      ) : (
        <MeasureDoubt
          gate={gate}
          field={field.label}
          again={say("doubt.change", { field: field.label })}
        />
      )}
    </Frame>
  );
}

/** As in the first look: none of them means that nothing odd was seen. */
function LooksPage({ props, asked }: { readonly props: FieldProps; readonly asked: Asked }) {
  const { field, before, draft } = props;
  const now = draft.texts[field.name] ?? textOf(before, field);
  return (
    <Frame props={props} asked={{ ...asked, gate: { ...asked.gate, pass: asked.done } }}>
      <Ticks
        labelledBy="question"
        options={ALL.map((value) => ({ value, word: say(`look_seen.${value}`) }))}
        chosen={ALL.filter((code) => partsOf(now).includes(code))}
        onChange={(seen) => {
          asked.change(joined(seen.length === 0 ? ["normal"] : seen));
        }}
      />
    </Frame>
  );
}

function GaugePage({ props, asked }: { readonly props: FieldProps; readonly asked: Asked }) {
  const [dip = "", gaugeTo = ""] = asked.text.split("|");
  return (
    <Frame props={props} asked={asked}>
      <GaugePad
        walk={{ dip, gaugeTo }}
        change={({ dip: from = "", gaugeTo: to = "" }) => {
          asked.change([from, to].join("|"));
        }}
      />
    </Frame>
  );
}

export function FieldScreen(props: FieldProps) {
  const asked = useField(props);
  const { field, before } = props;
  if (field.kind === "looks") return <LooksPage props={props} asked={asked} />;
  if (field.kind === "gauge") return <GaugePage props={props} asked={asked} />;
  if (field.kind === "choice")
    return (
      <Frame props={props} asked={asked}>
        <Answers
          options={field.options}
          last={{ value: textOf(before, field), word: say("amend.stands_so") }}
          onAnswer={(value) => {
            asked.change(value);
            asked.done();
          }}
        />
      </Frame>
    );
  if (field.kind !== "text") return <NumberPage props={props} asked={asked} />;
  return (
    <Frame props={props} asked={asked}>
      <TextField
        id="amend-text"
        label={startLarge(field.label)}
        number={false}
        text={asked.text}
        onText={asked.change}
      />
    </Frame>
  );
}

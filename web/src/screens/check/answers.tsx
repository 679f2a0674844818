// Every answer once more before anything is poured, each with a Change that returns here.
import type { AssessSumpResult } from "../../core/messages";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { StateMark } from "../../elements/statemark";
import { assessBody, dipTyped } from "../../store/walk";
import { lineWord, noteSentence, touchedWord } from "../../words/codes";
import { errorSentence } from "../../words/errors";
import { write, writeTyped } from "../../words/numbers";
import { say } from "../../words/say";
import { useAnswer } from "../core";
import { address } from "../route";
import { dipLabel, dipSteps, writeDip } from "./level";
import { formula } from "./reading";
import type { CheckProps, CheckStep } from "./steps";

interface RowProps {
  readonly label: string;
  readonly value: string;
  readonly note?: string | undefined;
  readonly to: string;
}

function Row({ label, value, note, to }: RowProps) {
  return (
    <div class="answer-row">
      <dt>{label}</dt>
      <dd>
        <span class="answer-value">{value}</span>
        {note === undefined || note === "" ? null : <span class="note">{note}</span>}
      </dd>
      <dd class="answer-change">
        <PlaceLink to={to} label={say("answers.change_this", { field: label })}>
          {say("change")}
        </PlaceLink>
      </dd>
    </div>
  );
}

/** A number that was not typed yet is said so; it never shows as an empty place. */
function typedOr(text: string, unit: string): string {
  return text.trim() === "" ? say("answers.missing") : writeTyped({ text, unit });
}

function fillRow({ machine, walk }: CheckProps): RowProps {
  const full = write(machine.shown.shown.full_depth);
  const isFull = walk.fill.trim() === "";
  return {
    label: say("answers.fill"),
    value: isFull ? say("answers.full_mark") : typedOr(walk.fill, machine.body.machine.units.stick),
    note: isFull ? full : say("answers.fill_note", { full }),
    to: address("machines", machine.machine, "fill", "change"),
  };
}

/** Stands there only once somebody said that there is little. */
function stockRows({ machine, walk }: CheckProps): readonly RowProps[] {
  if (walk.stock.trim() === "") return [];
  return [
    {
      label: say("answers.stock"),
      value: typedOr(walk.stock, walk.stockUnit),
      to: address("machines", machine.machine, "stock", "change"),
    },
  ];
}

function dipRows(
  { machine, walk }: CheckProps,
  result: AssessSumpResult | null,
): readonly RowProps[] {
  const typed = machine.body.machine;
  const to = (place: CheckStep): string => address("machines", machine.machine, place, "change");
  const volume = result?.level?.shown.volume;
  const missing = say("answers.missing");
  const rows: Readonly<Record<ReturnType<typeof dipSteps>[number], RowProps>> = {
    dip: {
      label: dipLabel(typed),
      value: walk.dip.trim() === "" ? missing : writeDip(dipTyped(typed, walk)),
      note: volume === undefined ? undefined : say("dip.volume", { volume: write(volume) }),
      to: to("dip"),
    },
    clean_side: {
      label: say("answers.clean_side"),
      value: typedOr(walk.cleanSide, typed.units.stick),
      to: to("clean_side"),
    },
    touched: {
      label: say("answers.touched"),
      value: walk.touched === "" ? missing : touchedWord(walk.touched),
      to: to("touched"),
    },
  };
  return dipSteps(typed).map((step) => rows[step]);
}

function rowsOf(props: CheckProps, result: AssessSumpResult | null): readonly RowProps[] {
  const { machine, walk } = props;
  const typed = machine.body.machine;
  const { low, high } = machine.shown.shown;
  const to = (place: CheckStep): string => address("machines", machine.machine, place, "change");
  const aim = walk.aim === "" ? typed.target.aim : { text: walk.aim, unit: "%" };
  const missing = say("answers.missing");
  const target: RowProps = {
    label: say("answers.aim"),
    value: writeTyped(aim),
    note: say("answers.band", { low: write(low), high: write(high) }),
    to: to("target"),
  };
  return [
    ...dipRows(props, result),
    {
      label: say("answers.reading"),
      value: typedOr(walk.reading, "Brix"),
      note: formula(result),
      to: to("reading"),
    },
    {
      label: say("answers.line"),
      value: walk.line === "" ? missing : lineWord(walk.line),
      to: to("line"),
    },
    ...(typed.fluid.factor === undefined ? [] : [target, fillRow(props), ...stockRows(props)]),
  ];
}

export function AnswersScreen(props: CheckProps) {
  const { machine, walk, next, step, onBack } = props;
  const typed = machine.body.machine;
  const answer = useAnswer("assess_sump", assessBody(typed, walk, { dip: true, reading: true }));
  const result = answer?.kind === "ok" ? answer.result : null;
  const state = result?.strength?.state;
  const word = typed.fluid.factor === undefined ? say("go_on") : say("answers.go_on");
  return (
    <Page
      title={say("answers.title")}
      place={typed.name}
      step={step}
      onBack={onBack}
      action={<MainAction onPress={next}>{word}</MainAction>}
    >
      {answer?.kind === "error" ? <Fault>{errorSentence(answer.error)}</Fault> : null}
      <dl class="answer-list">
        {rowsOf(props, result).map((row) => (
          <Row key={row.label} {...row} />
        ))}
      </dl>
      {state === undefined ? null : (
        <p>
          <StateMark state={state} />
        </p>
      )}
      {result?.notes.map((note) => (
        <p key={note} class="note">
          {noteSentence(note)}
        </p>
      ))}
    </Page>
  );
}

// Every answer once more before anything is poured, each with a Change that returns here.
import type { AssessSumpResult } from "../../core/messages";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { StateMark } from "../../elements/statemark";
import {
  assessBody,
  dipTyped,
  readingTyped,
  readingUnit,
  secondTyped,
  warmthUnit,
} from "../../store/underway/walk";
import { levelChangeWord, lineWord, methodWord, touchedWord, waterWord } from "../../words/codes";
import { errorSentence } from "../../words/errors";
import { write, writeTyped } from "../../words/numbers";
import { say } from "../../words/say";
import { useAnswer } from "../core";
import { address } from "../route";
import { formula, readingDetails } from "./reading/formula";
import { dipLabel, dipSteps, writeDip } from "./dip/level";
import { isUnexplained } from "./lookback";
import { Notes } from "./notes";
import { againText } from "./reading/readingfacts";
import { levelWords } from "./since";
import { kindOf, type CheckProps, type CheckStep } from "./steps";
import { ZeroNotes } from "./reading/zeronotes";

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
      label: say(walk.touched === "moving" ? "answers.at_rest" : "answers.touched"),
      value: walk.touched === "" ? missing : touchedWord(walk.touched),
      to: to("touched"),
    },
  };
  return dipSteps(typed).map((step) => rows[step]);
}

/** The reading with what was done to it, and what stands beside it only where somebody gave it. */
function readingRows(props: CheckProps, result: AssessSumpResult | null): readonly RowProps[] {
  const { machine, walk } = props;
  const typed = machine.body.machine;
  const to = (place: CheckStep): string => address("machines", machine.machine, place, "change");
  const { again, diluted } = readingTyped(typed, walk);
  const details = readingDetails(result, {
    ...(again === undefined ? {} : { again }),
    ...(diluted === undefined ? {} : { diluted }),
  });
  const rows: readonly (RowProps | null)[] = [
    {
      label: say("answers.reading"),
      value: typedOr(walk.reading, readingUnit(typed)),
      note: [formula(result), ...details].filter((text) => text !== "").join(" · "),
      to: to("reading"),
    },
    again === undefined
      ? null
      : { label: say("answers.again"), value: againText(again), to: to("again") },
    kindOf(typed).asksWarmth
      ? {
          label: say("answers.warmth"),
          value: typedOr(walk.temperature, warmthUnit(typed)),
          to: to("warmth"),
        }
      : null,
  ];
  return rows.filter((row) => row !== null);
}

/** Stands there only where something was asked. */
function sinceRows({ machine, walk, since: { found } }: CheckProps): readonly RowProps[] {
  const to = address("machines", machine.machine, "since", "change");
  const missing = say("answers.missing");
  const { levelChange: level, toppedUpWith: water } = walk;
  const rows: readonly (RowProps | null)[] = [
    isUnexplained(found)
      ? {
          label: say("since.answer"),
          value: level === "" ? missing : levelChangeWord(level),
          note: found?.level === undefined ? undefined : levelWords(found.level),
          to,
        }
      : null,
    found?.topped_up === true
      ? { label: say("since.water_answer"), value: water === "" ? missing : waterWord(water), to }
      : null,
  ];
  return rows.filter((row) => row !== null);
}

function secondRows({ machine, walk }: CheckProps): readonly RowProps[] {
  const { second } = secondTyped(walk);
  if (second === undefined) return [];
  const { method, shows, factor } = second;
  return [
    {
      label: say("answers.second"),
      value: say("answers.second_value", { method: methodWord(method), shows: writeTyped(shows) }),
      ...(factor === undefined ? {} : { note: `× ${writeTyped(factor)}` }),
      to: address("machines", machine.machine, "second", "change"),
    },
  ];
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
    ...sinceRows(props),
    ...readingRows(props, result),
    {
      label: say("answers.line"),
      value: walk.line === "" ? missing : lineWord(walk.line),
      to: to("line"),
    },
    ...secondRows(props),
    ...(!kindOf(typed).hasPercent ? [] : [target, fillRow(props), ...stockRows(props)]),
  ];
}

/** Notes with their cures, and the two quiet ways to be surer. */
function Beside({ props, result }: { props: CheckProps; result: AssessSumpResult | null }) {
  const { machine, walk } = props;
  const to = (place: CheckStep): string => address("machines", machine.machine, place, "change");
  return (
    <>
      <ZeroNotes machine={machine} notes={result?.notes ?? []} from="answers" />
      <Notes result={result} />
      <div class="places places-pair">
        {walk.again.length > 0 ? null : <PlaceLink to={to("again")}>{say("again.ask")}</PlaceLink>}
        {walk.method === "" ? <PlaceLink to={to("second")}>{say("second.ask")}</PlaceLink> : null}
      </div>
    </>
  );
}

export function AnswersScreen(props: CheckProps) {
  const { machine, walk, next, step, onBack } = props;
  const typed = machine.body.machine;
  const answer = useAnswer("assess_sump", assessBody(typed, walk, { dip: true, reading: true }));
  const result = answer?.kind === "ok" ? answer.result : null;
  const state = result?.strength?.state;
  const word = kindOf(typed).hasPercent ? say("answers.go_on") : say("go_on");
  return (
    <Page
      title={say("answers.title")}
      place={typed.name}
      step={step}
      stays
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
      <Beside props={props} result={result} />
    </Page>
  );
}

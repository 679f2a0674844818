// Shift handover: what the next shift has to know, on one page, worked out by pycore from the log.
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import type { HandoverResult } from "../../core/messages";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { lines } from "../../store/log/journal";
import { cleanOutReason, shiftStateWord, stateWord, stopReasonWord } from "../../words/codes";
import { errorSentence } from "../../words/errors";
import { write } from "../../words/numbers";
import { say, sayCount, type Key } from "../../words/say";
import { isoWithOffset, writeMoment, writeShortDay } from "../../words/times";
import { CoreTrouble } from "../foot";
import { address, back, go } from "../route";
import { storedLog, useAsked } from "./asked";

/** The longest ordinary shift (common practice, no source). */
const SHIFT_H = 12;
const HOUR_MS = 3_600_000;

interface Named {
  readonly machine: string;
  readonly name: string;
}

function nameOf({ name }: Named): string {
  return name === "" ? say("takein.no_name") : name;
}

function Part<T extends Named>({
  title,
  list,
  text,
}: {
  readonly title: Key;
  readonly list: readonly T[];
  readonly text: (row: T) => string;
}) {
  if (list.length === 0) return null;
  return (
    <section class="shift-part">
      <h2>{say(title)}</h2>
      <ul class="facts">
        {list.map((row, i) => (
          <li key={`${row.machine} ${i}`}>
            {row.machine === "" ? null : <span class="machine-name">{nameOf(row)}: </span>}
            {text(row)}
          </li>
        ))}
      </ul>
    </section>
  );
}

function openText({ open }: HandoverResult["open_pours"][number]): string {
  const blanks = { time: writeMoment(open.since), poured: String(open.buckets_poured) };
  return open.buckets_planned === 0
    ? sayCount("shift.open_free", open.buckets_poured, blanks)
    : say("shift.open", { ...blanks, planned: String(open.buckets_planned) });
}

function dueText({ due }: HandoverResult["rechecks"][number]): string {
  const key = due.resting ? "shift.due_resting" : due.overdue ? "shift.overdue" : "shift.due";
  return say(key, { time: writeMoment(due.due_at) });
}

/** No pour is in the log since: as far as anybody wrote down, what was read is still so. */
function offText({ reading }: HandoverResult["off_band"][number]): string {
  const { state, shown } = reading.strength ?? {};
  const time = writeMoment(reading.measured_at);
  if (state === undefined || shown?.strength === undefined) return time;
  return say("shift.off", { state: stateWord(state), strength: write(shown.strength), time });
}

function checkText({ due_s, every_d }: HandoverResult["checks"][number]): string {
  if (due_s === undefined) return say("shift.check_never");
  return sayCount("shift.check", every_d, {
    day: writeShortDay(new Date(due_s * 1000).toISOString()),
  });
}

const cleanText = ({ clean_out }: HandoverResult["clean_outs"][number]): string =>
  clean_out.map(cleanOutReason).join(" ");

function lowText({ level }: HandoverResult["low_sumps"][number]): string {
  const { volume, room } = level.level?.shown ?? {};
  if (volume === undefined || room === undefined) return writeMoment(level.measured_at);
  // Litres, not buckets: a recipe may pour more of them that are not full.
  const blanks = { volume: write(volume), room: write(room) };
  return say("shift.low", { ...blanks, time: writeMoment(level.measured_at) });
}

/** Until when, and by whom; a tag whose time has passed is still there. */
function tagText({ by, state }: HandoverResult["states"][number]["now"]): readonly string[] {
  const { until } = state;
  const isPast = until !== undefined && Date.parse(until) < Date.now();
  return [
    ...(until === undefined
      ? []
      : [say(isPast ? "shift.state_past" : "shift.state_until", { time: writeMoment(until) })]),
    ...(by === "" ? [] : [say("shift.state_by", { by })]),
  ];
}

function stateText({ now }: HandoverResult["states"][number]): string {
  const { state, reason, remarks } = now.state;
  const why = reason === undefined ? "" : stopReasonWord(reason);
  const blanks = { state: shiftStateWord(state), why, time: writeMoment(now.measured_at) };
  const main = say(why === "" ? "shift.state" : "shift.state_why", blanks);
  return [main, ...tagText(now), remarks ?? ""].filter((part) => part !== "").join(" ");
}

function saidText({ text, by, measured_at }: HandoverResult["said"][number]): string {
  const blanks = { text, by, time: writeMoment(measured_at) };
  return say(by === "" ? "shift.said" : "shift.said_by", blanks);
}

function Parts({ page }: { readonly page: HandoverResult }) {
  const parts: readonly (readonly Named[])[] = [
    page.states,
    page.open_pours,
    page.rechecks,
    page.off_band,
    page.checks,
    page.clean_outs,
    page.low_sumps,
    page.unknown_additions,
    page.in_doubt,
    page.said,
  ];
  if (parts.every((part) => part.length === 0)) return <p>{say("shift.nothing")}</p>;
  return (
    <>
      <Part title="shift.states_title" list={page.states} text={stateText} />
      <Part title="shift.open_title" list={page.open_pours} text={openText} />
      <Part title="shift.due_title" list={page.rechecks} text={dueText} />
      <Part title="shift.off_title" list={page.off_band} text={offText} />
      <Part title="shift.checks_title" list={page.checks} text={checkText} />
      <Part title="clean.due" list={page.clean_outs} text={cleanText} />
      <Part title="shift.low_title" list={page.low_sumps} text={lowText} />
      <Part
        title="shift.unknown_title"
        list={page.unknown_additions}
        text={({ measured_at }) => say("shift.unknown", { time: writeMoment(measured_at) })}
      />
      <Part title="shift.doubt_title" list={page.in_doubt} text={() => say("shift.doubt")} />
      <Part title="shift.said_title" list={page.said} text={saidText} />
    </>
  );
}

export function HandoverScreen() {
  const [at] = useState(() => new Date());
  const now = isoWithOffset(at);
  const since = isoWithOffset(new Date(at.getTime() - SHIFT_H * HOUR_MS));
  const answer = useAsked("handover", `${lines.value.length} ${now}`, () => ({
    ...storedLog(),
    now,
    since,
  }));
  let content: ComponentChildren = <p role="status">{say("shift.working")}</p>;
  if (answer?.kind === "ok") content = <Parts page={answer.result} />;
  if (answer?.kind === "error") content = <p role="status">{errorSentence(answer.error)}</p>;
  return (
    <Page
      title={say("shift.title")}
      onBack={() => {
        back();
      }}
      action={
        <MainAction
          onPress={() => {
            go("backup");
          }}
        >
          {say("shift.pass_on")}
        </MainAction>
      }
    >
      <p class="note">{say("shift.at", { time: writeMoment(now), hours: String(SHIFT_H) })}</p>
      {content}
      <PlaceLink to={address("tell")}>{say("shift.note")}</PlaceLink>
      <CoreTrouble />
    </Page>
  );
}

export function HandoverLink() {
  return <PlaceLink to={address("handover")}>{say("shift.title")}</PlaceLink>;
}

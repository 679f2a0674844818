// The log: what was saved, by day, newest first.
import type { ReadonlySignal } from "@preact/signals";
import { useState } from "preact/hooks";
import { OtherAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { Safe } from "../../elements/safe";
import { StateMark } from "../../elements/statemark";
import { RECENT, RECENT_OF_EACH } from "../../store/log/checkpoint";
import { deedsAfter } from "../../store/log/deeds";
import type { DeedEntry, Entry, MachineEntry } from "../../store/log/entry";
import {
  apart,
  coldOf,
  opened,
  quarantined,
  recent,
  recentBehind,
  recentTold,
  removed,
  unreadable,
  wantWhole,
} from "../../store/log/journal";
import { machineById } from "../../store/log/machines";
import { keepingKey } from "../../store/log/keeping";
import { isUsed } from "../../store/log/lines";
import { write } from "../../words/numbers";
import { say, sayCount, type CountKey } from "../../words/say";
import { writeClock, writeDay } from "../../words/times";
import { deedWord, entryText, summary } from "../correct/facts";
import { address, back, keepHere, keptHere } from "../route";

/** What is stored and does not stand in the list. */
const NOT_LISTED: readonly (readonly [CountKey, ReadonlySignal<number>])[] = [
  ["log.unreadable", unreadable],
  ["log.removed", removed],
  ["log.apart", apart],
  ["log.quarantined", quarantined],
];

function nameOf(entry: Entry): string {
  if (entry.kind === "machine" || entry.kind === "check") return entry.body.machine.name;
  return machineById(entry.machine)?.body.machine.name ?? "";
}

/** In words; what is struck besides is not used for anything. */
function Amended({ entry }: { readonly entry: Entry }) {
  const { amended } = entry;
  return amended === undefined ? null : (
    <strong class="amend-mark">{say(`amend.mark_${amended.standing}`)}</strong>
  );
}

/** What followed a check: without it the row would seem to be all. */
function Then({ deed }: { readonly deed: DeedEntry }) {
  const strength =
    deed.kind === "recheck" ? deed.shown.assessment.strength?.shown.strength : undefined;
  const text = strength === undefined ? entryText(deed) : write(strength);
  const words = say("amend.deed", { what: deedWord(deed), text });
  return isUsed(deed) ? <span class="note">{words}</span> : <del class="note">{words}</del>;
}

function Line({ entry, named }: { readonly entry: Entry; readonly named: boolean }) {
  return (
    <li>
      <a class="log-row" href={address("log", entry.id)}>
        <span class="log-head">
          <time dateTime={entry.measured_at}>{writeClock(entry.measured_at)}</time>
          {named ? <span class="machine-name">{nameOf(entry)}</span> : null}
          {entry.kind === "check" && isUsed(entry) ? (
            <StateMark state={entry.shown.assessment.strength?.state ?? "none"} />
          ) : null}
        </span>
        <Amended entry={entry} />
        {isUsed(entry) ? (
          <span class="note">{summary(entry)}</span>
        ) : (
          <del class="note">{summary(entry)}</del>
        )}
        {deedsAfter(entry.id).map((deed) => (
          <Then key={deed.id} deed={deed} />
        ))}
      </a>
    </li>
  );
}

/** Days as the person saw them: the date part of the stored local time. */
function byDay(list: readonly Entry[]): readonly (readonly [string, readonly Entry[]])[] {
  const days = new Map<string, Entry[]>();
  for (const entry of [...list].reverse()) {
    const day = entry.measured_at.slice(0, 10);
    const found = days.get(day);
    if (found === undefined) days.set(day, [entry]);
    else found.push(entry);
  }
  return [...days];
}

function Days({ list, named }: { readonly list: readonly Entry[]; readonly named: boolean }) {
  return (
    <>
      {byDay(list).map(([day, found]) => (
        <section key={day} class="log-day">
          <h2>{writeDay(`${day}T12:00:00`)}</h2>
          <ul class="log-list">
            {found.map((entry) => (
              <Safe key={entry.id} instead={<li class="note">{say("log.not_drawn")}</li>}>
                <Line entry={entry} named={named} />
              </Safe>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}

/** So many rows are drawn at once: the time to open the log must not grow with it. */
const ROWS_AT_ONCE = RECENT;

/** The latest entries, and older ones when somebody asks for them. */
function Latest({ machine }: { readonly machine: string | undefined }) {
  const [rows, setRows] = useState(() => keptHere("rows") ?? ROWS_AT_ONCE);
  const here = (entry: Entry): boolean => machine === undefined || entry.machine === machine;
  const cold = coldOf(machine).entries;
  const known = recentTold.value.filter(here);
  // Only whoever looks further back than the recent entries waits until the others are read.
  const gapless = machine === undefined ? RECENT : RECENT_OF_EACH;
  const isShort = cold > 0 && rows > gapless;
  if (isShort) wantWhole();
  const drawn = known.slice(isShort ? -gapless : -rows);
  const older = Math.min(ROWS_AT_ONCE, known.length + cold - rows);
  return (
    <>
      <Days list={drawn} named={machine === undefined} />
      {isShort ? <p role="status">{say("machines.reading")}</p> : null}
      {older <= 0 ? null : (
        <OtherAction
          onPress={() => {
            keepHere("rows", rows + ROWS_AT_ONCE);
            setRows(rows + ROWS_AT_ONCE);
          }}
        >
          {sayCount("log.older", older)}
        </OtherAction>
      )}
    </>
  );
}

/** Places that several entries claim: to decide about, or to see what was decided. */
function Claimed() {
  const isDecided = recentBehind.value.some(({ decision }) => decision !== null);
  if (apart.value === 0 && !isDecided) return null;
  const word = apart.value === 0 ? say("claimed.title") : say("claimed.decide");
  return <PlaceLink to={address("log", "claimed")}>{word}</PlaceLink>;
}

export function LogScreen({ machine }: { readonly machine?: MachineEntry }) {
  const id = machine?.machine;
  const known = recent.value.filter((entry) => id === undefined || entry.machine === id);
  const checks = known.filter((entry) => entry.kind === "check").length + coldOf(id).checks;
  const isReady = opened.value.kind === "ready";
  return (
    <Page
      title={say("log.title")}
      place={machine?.body.machine.name}
      beginsAt={keptHere("scrolled") ?? 0}
      onBack={() => {
        back(...(machine === undefined ? [] : ["machines", machine.machine]));
      }}
    >
      {isReady ? (
        <p>{checks === 0 ? say("log.empty") : sayCount("log.count", checks)}</p>
      ) : (
        <p role="status">{say("machines.reading")}</p>
      )}
      <Latest machine={id} />
      {NOT_LISTED.filter(([, found]) => found.value > 0).map(([key, found]) => (
        <p key={key} class="note">
          {sayCount(key, found.value)}
        </p>
      ))}
      <Claimed />
      {machine === undefined ? (
        <PlaceLink to={address("print", "log_sheet")}>{say("print.empty_log")}</PlaceLink>
      ) : (
        <PlaceLink to={address("machines", machine.machine, "print", "log_sheet")}>
          {say("print.empty_log")}
        </PlaceLink>
      )}
      <div class="foot">
        <p class="note">{say("foot.where")}</p>
        <p class="note">{say(keepingKey())}</p>
      </div>
    </Page>
  );
}

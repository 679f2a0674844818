// Trend of one machine: a plain sentence, charts or the same numbers as a table, and what the
// shop learns from them.
import { useState } from "preact/hooks";
import type { TrendResult } from "../../core/messages";
import { MainAction, OtherAction, PlaceLink } from "../../elements/buttons";
import { Choice } from "../../elements/fields/choice";
import { Page } from "../../elements/page";
import type { MachineEntry } from "../../store/log/entry";
import { errorSentence } from "../../words/errors";
import { say } from "../../words/say";
import { CoreTrouble } from "../foot";
import { address, back, go } from "../route";
import { useTrend } from "./asked";
import { Charts } from "./charts";
import {
  cleanOutSentences,
  leftOutSentences,
  lossSentences,
  nextCheckSentence,
  strengthSentences,
  topUpSentence,
} from "./sentences";
import { TrendTable } from "./table";

const PERIODS = { weeks: 28, season: 91, all: null } as const;
type Period = keyof typeof PERIODS;

function Facts({ texts }: { readonly texts: readonly string[] }) {
  return (
    <ul class="facts">
      {texts.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}

function Learned({ trend, machine }: { readonly trend: TrendResult; readonly machine: string }) {
  const topUp = topUpSentence(trend);
  const out = leftOutSentences(trend);
  return (
    <>
      <section class="shift-part">
        <h2>{say("trend.next_title")}</h2>
        <p>{nextCheckSentence(trend)}</p>
      </section>
      <section class="shift-part">
        <h2>{say("trend.top_up_title")}</h2>
        <p>{topUp ?? say("trend.top_up_unknown")}</p>
        {topUp === null ? null : <p class="note">{say("trend.top_up_note")}</p>}
      </section>
      <section class="shift-part">
        <h2>{say("trend.loss_title")}</h2>
        <Facts texts={lossSentences(trend)} />
        {trend.losses.lost_l_d === undefined ? null : <p class="note">{say("trend.loss_note")}</p>}
        {out.map((text) => (
          <p key={text} class="note">
            {text}
          </p>
        ))}
      </section>
      <section class="shift-part">
        <h2>{say("trend.clean_title")}</h2>
        <Facts texts={cleanOutSentences(trend)} />
        {trend.clean_out.due ? (
          <PlaceLink to={address("machines", machine, "clean-out")}>{say("clean.title")}</PlaceLink>
        ) : null}
      </section>
    </>
  );
}

interface ToldProps {
  readonly trend: TrendResult;
  readonly machine: MachineEntry;
  readonly asTable: boolean;
  readonly onTable: (asTable: boolean) => void;
}

function Told({ trend, machine, asTable, onTable }: ToldProps) {
  const said = strengthSentences(trend);
  return (
    <>
      <p class="trend-said" role="status">
        {said.join(" ")}
      </p>
      {asTable ? (
        <TrendTable trend={trend} />
      ) : (
        <Charts trend={trend} about={said.join(" ")} own={machine.shown} />
      )}
      <OtherAction
        onPress={() => {
          onTable(!asTable);
        }}
      >
        {say(asTable ? "trend.as_chart" : "trend.as_table")}
      </OtherAction>
      <Learned trend={trend} machine={machine.machine} />
    </>
  );
}

export function TrendScreen({ machine }: { readonly machine: MachineEntry }) {
  const [period, setPeriod] = useState<Period>("season");
  const [asTable, setTable] = useState(false);
  const id = machine.machine;
  const answer = useTrend(id, PERIODS[period]);
  return (
    <Page
      title={say("trend.title")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", id);
      }}
      action={
        <MainAction
          onPress={() => {
            go("machines", id, "look");
          }}
        >
          {say("machine.start")}
        </MainAction>
      }
    >
      <div class="periods">
        <Choice
          name="period"
          labelledBy="question"
          options={(["weeks", "season", "all"] as const).map((value) => ({
            value,
            word: say(`trend.period_${value}`),
          }))}
          chosen={period}
          onChoose={setPeriod}
        />
      </div>
      {answer === null ? <p role="status">{say("trend.working")}</p> : null}
      {answer?.kind === "error" ? <p role="status">{errorSentence(answer.error)}</p> : null}
      {answer?.kind === "ok" ? (
        <Told trend={answer.result} machine={machine} asTable={asTable} onTable={setTable} />
      ) : null}
      <div class="places">
        <PlaceLink to={address("machines", id, "log")}>{say("log.open")}</PlaceLink>
        <PlaceLink to={address("care")}>{say("care.title")}</PlaceLink>
      </div>
      <CoreTrouble />
    </Page>
  );
}

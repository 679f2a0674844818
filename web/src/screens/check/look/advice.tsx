// The advice: what it is, why, and who says so. The person decides, and the choice is written down.
import type { DeskError, JudgeLookResult } from "../../../core/messages";
import { MainAction, OtherAction, PlaceLink } from "../../../elements/buttons";
import { Fault } from "../../../elements/fault";
import { Page } from "../../../elements/page";
import { changeLook, judgeBody, lookOf, type Chosen } from "../../../store/underway/looks";
import { warmthUnit } from "../../../store/underway/walk";
import { errorSentence } from "../../../words/errors";
import { isKey, say, sayCount } from "../../../words/say";
import { sourceWord } from "../../../words/sources";
import { isoWithOffset } from "../../../words/times";
import { useAnswer } from "../../core";
import { address, back, go } from "../../route";
import { NotSaved } from "../notsaved";
import { DeadWays } from "./dead";
import { TryAgain } from "../checkframe";
import { measurePlace } from "../place";
import { useLookBack } from "../lookback";
import { Foam } from "./foam";
import { isOfLimits, LimitsFault } from "./limitsfault";
import { useSavingLook } from "./saving";
import type { LookProps } from "./screen";

function Smell({ id }: { readonly id: string }) {
  return (
    <section class="task last-check">
      <h2>{say("look.smell_again")}</h2>
      <p>{say("look.smell_hint")}</p>
      <OtherAction
        onPress={() => {
          changeLook(id, { again: "gone" });
        }}
      >
        {say("look.smell_gone")}
      </OtherAction>
      <OtherAction
        onPress={() => {
          changeLook(id, { again: "still" });
        }}
      >
        {say("look.smell_still")}
      </OtherAction>
    </section>
  );
}

function rowSentence(code: string): string {
  const key = `look_row.${code}`;
  return isKey(key) ? say(key) : code.replaceAll("_", " ");
}

export function Rows({ rows }: { readonly rows: JudgeLookResult["rows"] }) {
  if (rows.length === 0) return null;
  return (
    <section class="cautions">
      <h2>{say("look.why_title")}</h2>
      <ul>
        {rows.map(({ code, source }) => (
          <li key={code}>
            {rowSentence(code)}{" "}
            <span class="note look-source">
              {say("look.source", { source: sourceWord(source) })}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Actions({ machine, advice }: LookProps & { readonly advice: JudgeLookResult }) {
  const id = machine.machine;
  const { saving, press } = useSavingLook(machine);
  const { decision } = advice;
  const choose = (chosen: Chosen): void => {
    changeLook(id, { advice, chosen, at: isoWithOffset(new Date()) });
  };
  const on = (chosen: Chosen): void => {
    choose(chosen);
    go("machines", id, measurePlace(id));
  };
  const main = (): void => {
    if (decision === "do_not_feed") {
      choose("stopped");
      press();
    } else on(decision === "go_on" ? "went_on" : "done_first");
  };
  return (
    <>
      <NotSaved saving={saving} />
      {decision === "go_on" ? null : (
        <OtherAction
          onPress={() => {
            on("all_the_same");
          }}
        >
          {say("look.all_the_same")}
        </OtherAction>
      )}
      <MainAction onPress={main} about={decision} busy={saving.kind === "saving"}>
        {saving.kind === "saving" ? say("save.saving") : say(`look.do.${decision}`)}
      </MainAction>
    </>
  );
}

function Advice({ machine, advice }: LookProps & { readonly advice: JudgeLookResult }) {
  const { decision, rows, foam, smell_again: smell, nitrite_interval_d: days } = advice;
  return (
    <>
      <p class="plain-lead" role="status">
        {say(`look.lead.${decision}`)}
      </p>
      {smell ? <Smell id={machine.machine} /> : null}
      {lookOf(machine.machine).value.seen.includes("foam") ? (
        <Foam id={machine.machine} order={foam} />
      ) : null}
      <Rows rows={rows} />
      {days === undefined ? null : <p>{sayCount("look.nitrite_days", days)}</p>}
      {decision === "do_not_feed" ? <DeadWays machine={machine.machine} /> : null}
      <p class="look-never">{say("look.never")}</p>
      <p class="note">{say("look.advice")}</p>
      <p class="note">{say("recipe.sheet")}</p>
      <PlaceLink to={address("limits")}>{say("look.limits")}</PlaceLink>
    </>
  );
}

function Refused({ error }: { readonly error: DeskError }) {
  return isOfLimits(error) ? <LimitsFault error={error} /> : <Fault>{errorSentence(error)}</Fault>;
}

export function AdviceScreen({ machine }: LookProps) {
  const id = machine.machine;
  const typed = machine.body.machine;
  const earlier = useLookBack(machine);
  const known = earlier?.kind === "ok" ? earlier.result : null;
  // Judged once earlier results are known: an advice without them could be another one.
  const body = judgeBody(typed, lookOf(id).value, warmthUnit(typed), known);
  const answer = useAnswer("judge_look", earlier === null ? null : body);
  const advice = answer?.kind === "ok" ? answer.result : null;
  const action =
    advice === null ? (
      answer?.kind === "down" ? (
        <TryAgain />
      ) : undefined
    ) : (
      <Actions machine={machine} advice={advice} />
    );
  return (
    <Page
      title={advice === null ? say("look.title") : say(`look.decision.${advice.decision}`)}
      place={typed.name}
      onBack={() => {
        back("machines", id, "look");
      }}
      action={action}
    >
      {answer === null ? <p role="status">{say("recipe.working")}</p> : null}
      {answer?.kind === "down" ? <p role="alert">{say("recipe.down")}</p> : null}
      {answer?.kind === "error" ? <Refused error={answer.error} /> : null}
      {advice === null ? null : <Advice machine={machine} advice={advice} />}
    </Page>
  );
}

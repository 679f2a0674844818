// The recipe of the new charge and one tick for each bucket; or what really went in another way.
import { Amount } from "../../elements/amount";
import type { MachineEntry } from "../../store/log/entry";
import { changeCleaning, type Cleaning } from "../../store/underway/cleaning";
import type { Answer } from "../../core/client";
import type { PlanCheckResult } from "../../core/messages";
import { secondLook } from "../../core/secondlook";
import { cautionSentence } from "../../words/codes";
import { errorSentence } from "../../words/errors";
import { write } from "../../words/numbers";
import { say, sayCount } from "../../words/say";
import { Notes } from "../check/notes";
import { Disagree } from "../check/recipe/disagree";
import { bucketsOf } from "../check/pour/steps";
import { concentrateBy } from "../check/recipe/pours";
import { chargeRecipe } from "./charge";

export interface ChargeProps {
  readonly machine: MachineEntry;
  readonly cleaning: Cleaning;
  readonly answer: Answer<PlanCheckResult> | null;
}

/** Null while there is no recipe that can be shown. */
export function bucketsToCome({ cleaning, answer }: ChargeProps): number | null {
  const recipe = chargeRecipe(answer);
  if (recipe === null || answer?.kind !== "ok") return null;
  if (!secondLook(answer.result.shown, recipe).agrees) return null;
  return Math.max(0, recipe.buckets - cleaning.buckets.length);
}

function Bucket({ cleaning, answer }: ChargeProps) {
  const recipe = chargeRecipe(answer);
  if (recipe === null || answer?.kind !== "ok") return null;
  const look = secondLook(answer.result.shown, recipe);
  if (!look.agrees) return <Disagree recipe={recipe} look={look} />;
  const now = bucketsOf(recipe)[cleaning.buckets.length];
  const by = now === undefined ? null : concentrateBy(now);
  const then = { strength: write(recipe.strength), low: write(recipe.low) };
  return (
    <>
      <p role="status">
        {sayCount("clean.bucket_count", cleaning.buckets.length, {
          total: String(recipe.buckets),
        })}
      </p>
      {now === undefined ? null : (
        <div class="instruction-words">
          <Amount order="1" word={say("amount.water")} amount={now.water} />
          {now.concentrate.value === 0 ? null : (
            <Amount order="2" word={say("amount.concentrate")} amount={now.concentrate} />
          )}
          {by === null ? null : <p class="note">{by}</p>}
        </div>
      )}
      <p>
        {say("clean.charge_then", {
          ...then,
          high: write(recipe.high),
          volume: write(recipe.volume),
        })}
      </p>
    </>
  );
}

export function ChargePage(props: ChargeProps) {
  const { machine, cleaning, answer } = props;
  const recipe = chargeRecipe(answer);
  return (
    <>
      {cleaning.otherWay ? <p>{say("clean.other_text")}</p> : <Bucket {...props} />}
      {answer === null && !cleaning.otherWay ? <p role="status">{say("recipe.working")}</p> : null}
      {answer?.kind === "error" ? <p role="alert">{errorSentence(answer.error)}</p> : null}
      {answer?.kind === "down" ? <p role="alert">{say("recipe.down")}</p> : null}
      {recipe === null || cleaning.otherWay ? null : (
        <ul class="ready-list">
          {recipe.cautions.map((code) => (
            <li key={code}>{cautionSentence(code)}</li>
          ))}
        </ul>
      )}
      {answer?.kind === "ok" ? <Notes result={answer.result.assessment} /> : null}
      <button
        type="button"
        class="place-link quiet-button"
        onClick={() => {
          changeCleaning(machine.machine, { otherWay: !cleaning.otherWay });
        }}
      >
        {say(cleaning.otherWay ? "clean.by_buckets" : "clean.other_way")}
      </button>
    </>
  );
}

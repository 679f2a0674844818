// A recipe as shown, from pycore's rounded numbers alone; the log shows the stored one with the same view.
import type { MachineTyped, PlanCheckResult, PourShown, Shown } from "../../core/messages";
import { Amount } from "../../elements/amount";
import { BucketRow } from "../../elements/bucket";
import { SectionDrawing } from "../../elements/section";
import { StateMark, StateShape } from "../../elements/statemark";
import { cautionSentence } from "../../words/codes";
import { write } from "../../words/numbers";
import { isKey, say, sayCount, type CountKey } from "../../words/say";
import { amountsOf } from "./amounts";
import { Reasons } from "./reasons";
import { Ways } from "./ways";

const SENTENCES: Readonly<Record<string, CountKey>> = {
  weak: "recipe.weak",
  in_range: "recipe.in_range",
  strong: "recipe.strong",
};

/** The first kind of bucket large; the rest in one line, in pouring order. */
export function Pours({
  pours,
  takeOut,
}: {
  readonly pours: readonly PourShown[];
  readonly takeOut?: Shown;
}) {
  const [first, ...rest] = pours;
  if (first === undefined) return null;
  const lines = [
    ...(takeOut === undefined ? [] : [{ word: say("amount.take_out"), amount: takeOut }]),
    { word: say("amount.water"), amount: first.water },
    { word: say("amount.concentrate"), amount: first.concentrate },
  ].filter(({ amount }) => amount.value > 0);
  return (
    <section class="pours">
      <h2>{sayCount("recipe.each", first.count)}</h2>
      {lines.map(({ word, amount }, i) => (
        <Amount key={word} order={String(i + 1)} word={word} amount={amount} />
      ))}
      {rest.length === 0 ? null : (
        <p class="pours-rest">
          {sayCount("recipe.like_this", first.count)}
          {rest.map((pour, i) => (
            <span key={i}>
              {" "}
              {sayCount("recipe.plus", pour.count, { amounts: amountsOf(pour) })}
            </span>
          ))}
        </p>
      )}
      <p class="note">{say("recipe.weight", { weight: write(first.weight) })}</p>
    </section>
  );
}

export function BeforeAfter({ result }: { readonly result: PlanCheckResult }) {
  const { assessment, after, shown } = result;
  const now = {
    strength: assessment.strength?.shown.strength,
    volume: assessment.level?.shown.volume,
  };
  const range = {
    strength: write(shown.strength),
    low: write(shown.low),
    high: write(shown.high),
    volume: write(shown.volume),
  };
  const before = say("recipe.now", {
    strength: now.strength === undefined ? "" : write(now.strength),
    volume: now.volume === undefined ? "" : write(now.volume),
  });
  return (
    <div class="before-after">
      <figure>
        <SectionDrawing
          name={say("recipe.before_drawing")}
          section={assessment.section ?? null}
          size="half"
        />
        <figcaption>
          <b>{say("recipe.before")}</b> {before}
        </figcaption>
      </figure>
      <figure>
        <SectionDrawing name={say("recipe.after_drawing")} section={after} size="half" />
        <figcaption>
          <b>{say("recipe.after")}</b> {say("recipe.then", range)}
        </figcaption>
      </figure>
    </div>
  );
}

export function Cautions({ codes }: { readonly codes: readonly string[] }) {
  const said = codes.filter((code) => code !== "nothing_to_pour");
  return (
    <section class="cautions">
      <h2>{say("recipe.cautions")}</h2>
      <ul>
        {said.map((code) => (
          <li key={code}>{cautionSentence(code)}</li>
        ))}
      </ul>
      <p>{say("recipe.sheet")}</p>
    </section>
  );
}

export function RecipeView({
  result,
  machine,
}: {
  readonly result: PlanCheckResult;
  readonly machine: MachineTyped;
}) {
  const { plan, shown, assessment } = result;
  const buckets = plan.totals.buckets;
  const state = assessment.strength?.state;
  return (
    <>
      <p class="recipe-sentence" role="status">
        <StateShape state={state ?? "none"} />
        <span>{sayCount(SENTENCES[state ?? ""] ?? "recipe.pour", buckets)}</span>
      </p>
      <BucketRow pours={shown.pours} name={sayCount("recipe.row", buckets)} />
      <Pours pours={shown.pours} takeOut={shown.take_out} />
      <BeforeAfter result={result} />
      <Reasons result={result} machine={machine} />
      <Cautions codes={plan.cautions} />
      <Ways ways={result.ways} />
    </>
  );
}

export function NothingView({ result }: { readonly result: PlanCheckResult }) {
  const why = `nothing.${result.plan.case}`;
  return (
    <section class="plain-page">
      <StateMark state={result.assessment.strength?.state ?? "none"} />
      <p class="plain-lead" role="status">
        {isKey(why) ? say(why) : say("nothing.other")}
      </p>
      <BeforeAfter result={result} />
      {result.plan.cautions.includes("above_full_mark") ? (
        <p>{cautionSentence("above_full_mark")}</p>
      ) : null}
    </section>
  );
}

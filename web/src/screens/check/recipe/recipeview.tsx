// A recipe as shown, from pycore's rounded numbers alone; the log shows the stored one with the same view.
import type { ComponentChildren } from "preact";
import type { MachineTyped, PlanCheckResult, Section, Shown } from "../../../core/messages";
import { BucketRow } from "../../../elements/drawings/bucket";
import { SectionDrawing } from "../../../elements/drawings/section";
import { StateMark, StateShape } from "../../../elements/statemark";
import { cautionInFull, chanceSentence, type State } from "../../../words/codes";
import { write } from "../../../words/numbers";
import { isKey, say, sayCount, type CountKey } from "../../../words/say";
import { plannedStrength } from "../reading/apart";
import { isEmpty, type Recipe } from "./chosen";
import { Pours } from "./pours";
import { Reasons } from "./reasons";

interface ViewProps {
  readonly result: PlanCheckResult;
  readonly recipe: Recipe;
  /** The strength before, where the result itself does not name it for people. */
  readonly now?: Shown | undefined;
}

const SENTENCES: Readonly<Record<string, CountKey>> = {
  lean_low: "recipe.lean_low",
  lean_full: "recipe.lean_out",
  in_range_low: "recipe.in_range_low",
  in_range_full: "recipe.in_range_low",
  rich_low: "recipe.rich_low",
  rich_full: "recipe.rich_out",
  new_charge: "recipe.new_charge",
  emptied: "recipe.emptied",
};

/** What kind of recipe this is, in one sentence: the case, unless something else decides more. */
function sentenceKey({ plan }: PlanCheckResult, recipe: Recipe): CountKey {
  if (recipe.why !== null) return "recipe.pour";
  if (recipe.cautions.includes("stock_short")) return "recipe.stock_short";
  if (recipe.verdict === "out_of_band") return "recipe.nearest";
  if (recipe.pours.some(({ kind }) => kind === "own_fluid")) return "recipe.lean_own";
  if (recipe.takeOut !== null)
    return plan.case.startsWith("rich") ? "recipe.rich_out" : "recipe.lean_out";
  if (recipe.verdict === "in_band" && plan.case === "lean_low") return "recipe.lean_band";
  return SENTENCES[plan.case] ?? "recipe.pour";
}

/** Where two methods disagree, the recipe can be for the strength of the other one. */
function isOfReading({ assessment, request }: PlanCheckResult): boolean {
  return assessment.strength?.strength_pct?.value === request.sump.strength_pct.value;
}

function strengthBefore(result: PlanCheckResult, now: Shown | undefined): Shown | undefined {
  const { assessment, disagreement } = result;
  if (isOfReading(result)) return assessment.strength?.shown.strength;
  return now ?? (disagreement === undefined ? undefined : plannedStrength(disagreement));
}

/** The state that the recipe starts from. */
export function stateBefore(result: PlanCheckResult): State {
  const state = result.assessment.strength?.state ?? "none";
  if (isOfReading(result)) return state;
  const { case: found } = result.plan;
  if (found.startsWith("lean")) return "weak";
  if (found.startsWith("rich")) return "strong";
  return found.startsWith("in_range") ? "in_range" : state;
}

/** Where nothing is poured one drawing is enough: two of the same say nothing. */
function Unchanged({ section, state }: { section: Section | null; state: string }) {
  return (
    <figure>
      <SectionDrawing
        name={say("recipe.before_drawing")}
        section={section}
        fullWord={say("drawn.full")}
        size="broad"
      />
      <figcaption>
        <b>{say("recipe.before")}</b> {state}
      </figcaption>
    </figure>
  );
}

export function BeforeAfter({ result, recipe, now: given }: ViewProps) {
  const { assessment } = result;
  const section = assessment.section ?? null;
  const now = {
    strength: strengthBefore(result, given),
    volume: assessment.level?.shown.volume,
  };
  const after = say("recipe.then", {
    strength: write(recipe.strength),
    low: write(recipe.low),
    high: write(recipe.high),
    volume: write(recipe.volume),
  });
  if (isEmpty(recipe)) return <Unchanged section={section} state={after} />;
  const before = say("recipe.now", {
    strength: now.strength === undefined ? "" : write(now.strength),
    volume: now.volume === undefined ? "" : write(now.volume),
  });
  return (
    <div class="before-after">
      <figure>
        <SectionDrawing name={say("recipe.before_drawing")} section={section} size="half" />
        <figcaption>
          <b>{say("recipe.before")}</b> {before}
        </figcaption>
      </figure>
      <figure>
        <SectionDrawing name={say("recipe.after_drawing")} section={recipe.after} size="half" />
        <figcaption>
          <b>{say("recipe.after")}</b> {after}
        </figcaption>
      </figure>
    </div>
  );
}

function Chance({ result, recipe }: ViewProps) {
  if (recipe.chance === null) return null;
  const { band_low, band_high } = result.shown;
  const band = { low: write(band_low), high: write(band_high) };
  return <p class="chance">{chanceSentence(recipe.chance, band)}</p>;
}

export function Cautions({ codes }: { readonly codes: readonly string[] }) {
  const said = codes.filter((code) => code !== "nothing_to_pour");
  return (
    <section class="cautions">
      <h2>{say("recipe.cautions")}</h2>
      <ul>
        {said.map((code) => (
          <li key={code}>{cautionInFull(code)}</li>
        ))}
      </ul>
      <p>{say("recipe.sheet")}</p>
    </section>
  );
}

export function RecipeView({
  result,
  recipe,
  machine,
  now,
  children,
}: ViewProps & { readonly machine: MachineTyped; readonly children?: ComponentChildren }) {
  const { pours, buckets, cautions } = recipe;
  return (
    <>
      {buckets === 0 ? null : (
        <p class="recipe-sentence" role="status">
          <StateShape state={stateBefore(result)} />
          <span>{sayCount(sentenceKey(result, recipe), buckets)}</span>
        </p>
      )}
      {pours.length === 0 ? null : (
        <BucketRow pours={pours} name={sayCount("recipe.row", buckets)} />
      )}
      <Pours recipe={recipe} />
      <BeforeAfter result={result} recipe={recipe} now={now} />
      <Chance result={result} recipe={recipe} />
      <Reasons result={result} machine={machine} recipe={recipe} />
      <Cautions codes={cautions} />
      {children}
    </>
  );
}

/** Cautions about coolant that stays as it is. */
const OF_WHAT_STAYS: readonly string[] = ["above_full_mark", "weak_must_not_stand"];

/** Why nothing is poured: what is short or too coarse says more than where the sump stands. */
function nothingKey({ plan }: PlanCheckResult, { cautions }: Recipe): string {
  if (cautions.includes("stock_short") || cautions.includes("water_short")) return "nothing.stock";
  if (cautions.includes("not_filled_up")) return "nothing.not_filled_up";
  return `nothing.${plan.case}`;
}

export function nothingSentence(result: PlanCheckResult, recipe: Recipe): string {
  const why = nothingKey(result, recipe);
  return isKey(why) ? say(why) : say("nothing.other");
}

export function NothingView({
  result,
  recipe,
  now,
  children,
}: ViewProps & { readonly children?: ComponentChildren }) {
  return (
    <section class="plain-page">
      <StateMark state={stateBefore(result)} />
      <p class="plain-lead" role="status">
        {nothingSentence(result, recipe)}
      </p>
      <BeforeAfter result={result} recipe={recipe} now={now} />
      {OF_WHAT_STAYS.filter((code) => recipe.cautions.includes(code)).map((code) => (
        <p key={code}>{cautionInFull(code)}</p>
      ))}
      {children}
    </section>
  );
}

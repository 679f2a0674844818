// The top of the one screen: the recipe as it is now, or in plain words what it waits for. Never an older
// one: between a key and its own answer there is nothing but dots.
import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import type { PlanCheckResult } from "../../../core/messages";
import { PlaceLink } from "../../../elements/buttons";
import { Strip } from "../../../elements/drawings/strip";
import type { MachineEntry } from "../../../store/log/entry";
import { unmixedAt } from "../../../store/log/mixing";
import { cautionSentence } from "../../../words/codes";
import { write } from "../../../words/numbers";
import { say, sayCount, type Piece } from "../../../words/say";
import { writeClock } from "../../../words/times";
import { useCore } from "../../core";
import { address } from "../../route";
import { bestSentence, cannotSentence } from "../recipe/cannot";
import { isEmpty, type Recipe } from "../recipe/chosen";
import { dipHint } from "../dip/level";
import { readingHint } from "../reading/reading";
import { nothingSentence, stateBefore } from "../recipe/recipeview";
import { linesAfter, linesBefore, mainLine, rangeLine, spokenRecipe } from "./line";
import { LOOK_PATH, PATHS, type View } from "./live";

const REST_MS = 1_000;
/** Said by the sentence on top already, so that the keys below still fit. */
const ON_TOP: readonly string[] = [
  "nothing_to_pour",
  "best_reachable",
  "needs_stronger_premix",
  "needs_weaker_mix",
  "no_room",
  "marks_too_coarse",
  "stock_short",
];
/** Said with every recipe: they stand behind those that belong to this one. */
const ALWAYS: readonly string[] = ["gloves_and_eyes", "water_first"];

interface ReadyProps {
  readonly result: PlanCheckResult;
  readonly recipe: Recipe;
}

export function isOutOfReach({ verdict }: Recipe): boolean {
  return verdict === "out_of_band";
}

/** The number itself stands in the line below. */
function textOf({ result, recipe }: ReadyProps): string {
  if (isOutOfReach(recipe)) return cannotSentence(result);
  return isEmpty(recipe) ? nothingSentence(result, recipe) : "";
}

function disagreement({ disagreement: apart }: PlanCheckResult): string | null {
  if (apart === undefined) return null;
  return say("second.disagree", { low: write(apart.shown.low), high: write(apart.shown.high) });
}

function Pieces({ pieces }: { readonly pieces: readonly Piece[] }) {
  return (
    <p class="result-main">
      {pieces.map(({ text, isFilled }, i) =>
        isFilled ? <b key={i}>{text}</b> : <span key={i}>{text}</span>,
      )}
    </p>
  );
}

function Recipes({ recipe }: { readonly recipe: Recipe }) {
  const pieces = mainLine(recipe);
  const line = (text: string) => (
    <p key={text} class="result-line">
      {text}
    </p>
  );
  return (
    <>
      {linesBefore(recipe).map(line)}
      {pieces.length === 0 ? null : <Pieces pieces={pieces} />}
      {linesAfter(recipe).map(line)}
    </>
  );
}

function Picture({ result, recipe }: ReadyProps) {
  const { shown, assessment } = result;
  const strength = assessment.strength;
  const value = strength?.strength_pct?.value;
  const written = strength?.shown.strength;
  const words = { low: write(shown.band_low), high: write(shown.band_high) };
  return (
    <Strip
      name={say("compact.strip", {
        ...words,
        now: written === undefined ? "" : write(written),
        after: write(recipe.strength),
      })}
      low={shown.band_low.value}
      high={shown.band_high.value}
      words={words}
      now={value === undefined ? null : { value, state: stateBefore(result) }}
      after={{
        value: recipe.strength.value,
        low: recipe.low.value,
        high: recipe.high.value,
      }}
    />
  );
}

interface MoreProps {
  readonly recipe: Recipe;
  readonly machine: string;
  readonly read_at: string;
}

/**
 * That a reading was taken too early goes before every other caution. The day stands on the recipe's own
 * page: around midnight it would push the keys under the edge here.
 */
function tooEarly(machine: string, read_at: string): string | null {
  const mixing = read_at === "" ? null : unmixedAt(machine, read_at);
  return mixing === null ? null : say("compact.unmixed", { due: writeClock(mixing.due_at) });
}

/** One caution in full and how many more; the whole card leads to all of them. */
function More({ recipe, machine, read_at }: MoreProps) {
  const onTop = isOutOfReach(recipe) ? ON_TOP : ["nothing_to_pour"];
  const codes = recipe.cautions.filter((code) => !onTop.includes(code));
  const early = tooEarly(machine, read_at);
  const [caution = "", ...rest] = [
    ...(early === null ? [] : [early]),
    ...codes.filter((code) => !ALWAYS.includes(code)).map(cautionSentence),
    ...codes.filter((code) => ALWAYS.includes(code)).map(cautionSentence),
  ];
  const more =
    rest.length === 0 ? say("compact.more") : sayCount("compact.more_count", rest.length);
  // What is seen comes first in what is spoken; "More" begins the name anyway.
  const seen = rest.length === 0 ? caution : `${caution} ${more}.`;
  return (
    <a
      class="result-more"
      href={address("machines", machine, "recipe")}
      aria-label={`${seen} ${say("compact.more_name")}`.trim()}
    >
      {caution} <span class="result-more-word">{more}</span>
    </a>
  );
}

function Ready({ result, recipe, machine, read_at }: ReadyProps & MoreProps) {
  const text = textOf({ result, recipe });
  const apart = disagreement(result);
  return (
    <>
      {apart === null ? null : <p class="result-line">{apart}</p>}
      {result.shown.fill_to === undefined ? null : (
        <p class="result-line">{say("compact.fill_to", { mark: write(result.shown.fill_to) })}</p>
      )}
      {text === "" ? <Recipes recipe={recipe} /> : <p class="result-text">{text}</p>}
      <p class="result-range">{rangeLine(recipe)}</p>
      <Picture result={result} recipe={recipe} />
      <More recipe={recipe} machine={machine} read_at={read_at} />
    </>
  );
}

function useWaiting(): string {
  return useCore().phase.value.kind === "starting" ? say("recipe.starting") : "…";
}

function plainText(view: Exclude<View, { kind: "ready" }>, waiting: string): string {
  if (view.kind === "missing") return say("compact.missing", { what: view.names.join(", ") });
  if (view.kind === "held") return view.text;
  if (view.kind === "down") return say("recipe.down");
  if (view.kind === "disagree") return say("second.title");
  return view.kind === "no_factor" ? say("no_factor.title") : waiting;
}

/** What a screen reader is told once the keys rest; nothing while an answer is on its way. */
function spokenText(view: View): string {
  if (view.kind === "waiting") return "";
  if (view.kind !== "ready") return plainText(view, "");
  const text = textOf(view);
  if (text === "") return spokenRecipe(view.recipe);
  return isOutOfReach(view.recipe) ? `${text} ${bestSentence(view.result, view.recipe)}` : text;
}

/**
 * Politely, and one second after the last key: not every digit on the way to a number. What was said of
 * other numbers is gone with the first key, and not only once the page has settled.
 */
function Announced({ text, about }: { readonly text: string; readonly about: string }) {
  const now = `${about} ${text}`;
  const [said, setSaid] = useState("");
  useEffect(() => {
    const rest = setTimeout(() => {
      setSaid(now);
    }, REST_MS);
    return () => {
      clearTimeout(rest);
    };
  }, [now]);
  return (
    <p class="only-spoken" role="status">
      {said === now ? text : ""}
    </p>
  );
}

/** One of the two measured and the other not to be had: that has pages of its own. */
function Without({ view, machine }: { readonly view: View; readonly machine: string }) {
  if (view.kind !== "missing" || view.paths.length !== 1) return null;
  const [path] = view.paths;
  if (path === PATHS.reading)
    return (
      <PlaceLink to={address("machines", machine, "holding")}>{say("reading.none")}</PlaceLink>
    );
  return path === PATHS.dip ? (
    <PlaceLink to={address("machines", machine, "state")}>{say("dip.none")}</PlaceLink>
  ) : null;
}

/** In which pump state the dip is true, then where the sample is taken, as long as that is next. */
function NextHint({ view, machine }: Pick<ResultProps, "view" | "machine">) {
  if (view.kind !== "missing" || view.paths.includes(LOOK_PATH)) return null;
  if (view.paths.includes(PATHS.dip)) return <p class="note">{dipHint(machine.body.machine)}</p>;
  return view.paths.includes(PATHS.reading) ? <p class="note">{readingHint()}</p> : null;
}

interface ResultProps {
  readonly view: View;
  readonly machine: MachineEntry;
  /** When the reading was typed; empty where there is none. */
  readonly read_at: string;
  /** What was typed: another text, another second of rest. */
  readonly about: string;
}

/** While an answer is on its way the area stays as high as it was: keys must not move under a thumb. */
function useSteadyHeight(isWaiting: boolean) {
  const area = useRef<HTMLElement>(null);
  const height_px = useRef(0);
  useLayoutEffect(() => {
    if (!isWaiting) height_px.current = area.current?.offsetHeight ?? 0;
  });
  return { area, style: isWaiting ? { minHeight: `${height_px.current}px` } : {} };
}

export function Result({ view, machine, read_at, about }: ResultProps) {
  const waiting = useWaiting();
  const { area, style } = useSteadyHeight(view.kind === "waiting");
  return (
    <section
      ref={area}
      class="result"
      style={style}
      aria-label={say("step.recipe")}
      data-kind={view.kind}
    >
      {view.kind === "ready" ? (
        <Ready
          result={view.result}
          recipe={view.recipe}
          machine={machine.machine}
          read_at={read_at}
        />
      ) : (
        <>
          <p class="result-text">{plainText(view, waiting)}</p>
          <NextHint view={view} machine={machine} />
          <Without view={view} machine={machine.machine} />
        </>
      )}
      <Announced text={spokenText(view)} about={about} />
    </section>
  );
}

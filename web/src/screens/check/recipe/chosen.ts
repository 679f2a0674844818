// What is poured: the main recipe, or another way that was chosen. Both come in one shape, so that
// page, log and second look treat them alike.
import type { PlanCheckResult, PourShown, Section, Shown, WayShown } from "../../../core/messages";
import { hasPlan, isWhole, type CheckEntry } from "../../../store/log/entry";

/** Codes of the likelihood scale; pycore gives none where a number would be too rough. */
export type Chance = NonNullable<WayShown["chance"]>;

/** A half-way reading: how long the pump runs, and how many kinds of bucket come before it. */
export interface HalfWay {
  readonly minutes: number;
  readonly after: number;
}

export interface Recipe {
  /** The reason's code of another way; null for the main recipe. */
  readonly why: string | null;
  readonly verdict: string;
  readonly pours: readonly PourShown[];
  readonly takeOut: Shown | null;
  readonly runIn: Shown | null;
  readonly setting: Shown | null;
  /** Nothing is poured now: a level or days are waited for, known or not. */
  readonly waits: boolean;
  readonly level: Shown | null;
  readonly levelDepth: Shown | null;
  readonly levelStrength: Shown | null;
  readonly days: number | null;
  readonly strength: Shown;
  readonly low: Shown;
  readonly high: Shown;
  readonly volume: Shown;
  readonly chance: Chance | null;
  readonly after: Section;
  readonly cautions: readonly string[];
  readonly buckets: number;
  readonly halfWay: HalfWay | null;
  /** Of the run after the last bucket; null where nothing is poured. */
  readonly runMinutes: number | null;
}

type Steps = PlanCheckResult["plan"]["steps"];

function halfWayOf(steps: Steps): HalfWay | null {
  const run = steps.findIndex(({ kind }) => kind === "run");
  const isLast = !steps.slice(run).some(({ kind }) => kind === "bucket");
  const minutes = steps[run]?.minutes;
  if (isLast || minutes === undefined) return null;
  const after = steps.slice(0, run).filter(({ kind }) => kind === "bucket").length;
  return { minutes, after };
}

function stepsPart(steps: Steps): Pick<Recipe, "halfWay" | "runMinutes"> {
  const runs = steps.filter(({ kind }) => kind === "run");
  return { halfWay: halfWayOf(steps), runMinutes: runs.at(-1)?.minutes ?? null };
}

function mainRecipe({ plan, shown, after }: PlanCheckResult): Recipe {
  return {
    ...shown,
    why: null,
    verdict: plan.verdict,
    takeOut: shown.take_out.value > 0 ? shown.take_out : null,
    runIn: null,
    setting: null,
    waits: false,
    level: null,
    levelDepth: null,
    levelStrength: null,
    days: null,
    chance: shown.chance ?? null,
    after,
    cautions: plan.cautions,
    buckets: plan.totals.buckets,
    ...stepsPart(plan.steps),
  };
}

/** Null where no such way is: an address can be older than the answers it was made for. */
function wayRecipe({ plan, ways }: PlanCheckResult, index: number): Recipe | null {
  const [way, full] = [ways[index], plan.alternatives[index]];
  if (way === undefined || full === undefined) return null;
  return {
    ...way,
    takeOut: way.take_out ?? null,
    runIn: way.run_in ?? null,
    setting: way.setting ?? null,
    waits: full.wait !== undefined,
    level: way.level ?? null,
    levelDepth: way.level_depth ?? null,
    levelStrength: way.level_strength ?? null,
    days: way.days ?? null,
    chance: way.chance ?? null,
    buckets: full.totals.buckets,
    ...stepsPart(full.steps),
  };
}

export function recipeOf(result: PlanCheckResult, way?: number): Recipe | null {
  return way === undefined ? mainRecipe(result) : wayRecipe(result, way);
}

/** What an entry stands for. A stored index always has its way: both were stored together. */
export function storedRecipe(check: CheckEntry): Recipe | null {
  return isWhole(check) && hasPlan(check.shown) ? recipeOf(check.shown, check.way) : null;
}

/** Nothing goes in, neither by bucket nor by hose. */
export function isEmpty({ pours, runIn }: Recipe): boolean {
  return pours.length === 0 && runIn === null;
}

// A recipe as the states that are reached one after the other, and what they mean for the log.
import type { PourShown, Shown, Typed } from "../../../core/messages";
import type { BucketRow } from "../../../store/written/deed";
import type { Tick } from "../../../store/underway/pouring";
import type { Recipe } from "../recipe/chosen";

export type State =
  | "ready"
  | "out"
  | "run_in"
  | "water"
  | "fluid"
  | "ready_mix"
  | "concentrate"
  | "stirred"
  | "poured"
  | "run";

export interface Step {
  readonly state: State;
  /** Which bucket, counted from 0; null for what is done beside them. */
  readonly bucket: number | null;
  readonly amount: Shown | null;
  readonly pour: PourShown | null;
  readonly minutes: number | null;
}

function aside(state: State, more: Partial<Step> = {}): Step {
  return { state, bucket: null, amount: null, pour: null, minutes: null, ...more };
}

function bucketSteps(pour: PourShown, bucket: number): readonly Step[] {
  const step = (state: State, amount: Shown | null = null): Step => ({
    state,
    bucket,
    amount,
    pour,
    minutes: null,
  });
  if (pour.kind === "ready_mix") return [step("ready_mix", pour.total), step("poured")];
  const carrier = pour.fluid === undefined ? step("water", pour.water) : step("fluid", pour.fluid);
  const filled = [carrier, step("concentrate", pour.concentrate)].filter(
    ({ amount }) => (amount?.value ?? 0) > 0,
  );
  return [...filled, ...(filled.length > 1 ? [step("stirred")] : []), step("poured")];
}

/** Every bucket of the recipe, in pouring order. */
export function bucketsOf(recipe: Recipe): readonly PourShown[] {
  return recipe.pours.flatMap((pour) => Array.from({ length: pour.count }, () => pour));
}

export function pourSteps(recipe: Recipe): readonly Step[] {
  const { takeOut, runIn, halfWay, pours } = recipe;
  const before = halfWay === null ? 0 : bucketCount(pours.slice(0, halfWay.after));
  const buckets = bucketsOf(recipe).map((pour, i) => bucketSteps(pour, i));
  return [
    aside("ready"),
    ...(takeOut === null ? [] : [aside("out", { amount: takeOut })]),
    ...(runIn === null ? [] : [aside("run_in", { amount: runIn })]),
    ...buckets.flatMap((steps, i) =>
      halfWay !== null && i === before
        ? [aside("run", { minutes: halfWay.minutes }), ...steps]
        : steps,
    ),
  ];
}

function bucketCount(pours: readonly PourShown[]): number {
  return pours.reduce((sum, { count }) => sum + count, 0);
}

/** The digits that the page showed, as somebody would type them. */
export function typedFrom({ value, decimals, unit, fraction }: Shown): Typed {
  if (fraction === undefined) return { text: value.toFixed(decimals), unit };
  const { whole, numerator, denominator } = fraction;
  const parts = `${numerator}/${denominator}`;
  return { text: whole === 0 ? parts : `${whole} ${parts}`, unit };
}

/** One bucket of the recipe as a row of the log. */
export function rowOf(pour: PourShown): BucketRow {
  const [water, concentrate] = [typedFrom(pour.water), typedFrom(pour.concentrate)];
  if (pour.kind === "ready_mix")
    return {
      count: 1,
      kind: "ready_mix",
      each: typedFrom(pour.total),
      strength: typedFrom(pour.strength),
    };
  if (pour.fluid !== undefined)
    return { count: 1, kind: "own_fluid", each: typedFrom(pour.fluid), concentrate };
  if (pour.concentrate.value === 0) return { count: 1, kind: "water", water };
  return pour.water.value === 0
    ? { count: 1, kind: "concentrate", concentrate }
    : { count: 1, kind: "mix", water, concentrate };
}

/** What runs in by hose is water; a mixing unit adds what it is set to. */
function runInRow({ runIn, setting }: Recipe): BucketRow | null {
  if (runIn === null) return null;
  const each = typedFrom(runIn);
  return setting === null
    ? { count: 1, kind: "water", each }
    : { count: 1, kind: "mix", each, strength: typedFrom(setting) };
}

/** Whether a row ran in by a hose and so is no bucket, whatever its count. */
export function isRunIn({ kind, each }: BucketRow): boolean {
  return each !== undefined && (kind === "water" || kind === "mix");
}

/** Rows that say the same become one with a larger count; the order stays. */
export function joined(rows: readonly BucketRow[]): readonly BucketRow[] {
  const found: BucketRow[] = [];
  for (const row of rows) {
    const last = found.at(-1);
    const isSame =
      last !== undefined && JSON.stringify({ ...last, count: 1 }) === JSON.stringify(row);
    if (last !== undefined && isSame) found[found.length - 1] = { ...last, count: last.count + 1 };
    else found.push(row);
  }
  return found;
}

/** All rows of a recipe, as the plan in the log has them. */
export function plannedRows(recipe: Recipe): readonly BucketRow[] {
  const run = runInRow(recipe);
  return joined([...(run === null ? [] : [run]), ...bucketsOf(recipe).map(rowOf)]);
}

/** What the ticks from `from` on say went in. A bucket counts only when it was poured. */
export function pouredRows(
  recipe: Recipe,
  steps: readonly Step[],
  ticks: readonly Tick[],
  from: number,
): readonly BucketRow[] {
  const rows = ticks.slice(from).flatMap(({ step, told }) => {
    const done = steps[step];
    const run = done?.state === "run_in" ? runInRow(recipe) : null;
    if (run !== null) return [run];
    if (done?.state !== "poured" || done.pour === null) return [];
    return [{ ...rowOf(done.pour), ...(told === true ? { about: true } : {}) }];
  });
  return joined(rows);
}

export function isOut(steps: readonly Step[], ticks: readonly Tick[], from: number): boolean {
  return ticks.slice(from).some(({ step }) => steps[step]?.state === "out");
}

/** How many buckets are poured. */
export function pouredCount(steps: readonly Step[], ticks: readonly Tick[]): number {
  return ticks.filter(({ step }) => steps[step]?.state === "poured").length;
}

export function totalBuckets(steps: readonly Step[]): number {
  return steps.filter(({ state }) => state === "poured").length;
}

/** The steps that are ticked off together: one state, or in the quick way the rest of the bucket. */
export function ticksAt(
  steps: readonly Step[],
  next: number,
  { whole, at, told = false }: { whole: boolean; at: string; told?: boolean },
): readonly Tick[] {
  const bucket = steps[next]?.bucket ?? null;
  const places = steps.flatMap((step, i) => (i > next && step.bucket === bucket ? [i] : []));
  const rest = whole && bucket !== null ? places : [];
  return [next, ...rest].map((step, i) => ({
    step,
    at,
    ...(told ? { told } : {}),
    ...(i > 0 ? { also: true } : {}),
  }));
}

/** Without the last tick, or without all that one press has ticked. */
export function undone(ticks: readonly Tick[]): readonly Tick[] {
  const first = ticks.map(({ also }) => also !== true).lastIndexOf(true);
  return ticks.slice(0, Math.max(0, first));
}

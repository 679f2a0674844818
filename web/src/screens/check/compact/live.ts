// What the one screen knows at this moment: what is still missing, what stands in the way, or the recipe.
// Nothing is worked out here; the questions are those of the guided pages.
import type { DeskError, Doubt, PlanCheckResult } from "../../../core/messages";
import type { Answer } from "../../../core/client";
import { secondLook } from "../../../core/secondlook";
import type { MachineEntry } from "../../../store/log/entry";
import { isLooked } from "../../../store/underway/looks";
import { assessBody, planBody, type Walk } from "../../../store/underway/walk";
import { fieldFromPath } from "../../../words/fields";
import { write } from "../../../words/numbers";
import { say, startLarge } from "../../../words/say";
import { useAnswer, useAnswerAhead } from "../../core";
import { recipeOf, type Recipe } from "../recipe/chosen";
import { dipName, dipSteps } from "../dip/level";
import type { LevelChange } from "../lookback";
import { openDoubts } from "../recipe/recipe";

export type View =
  | {
      readonly kind: "missing";
      readonly names: readonly string[];
      readonly paths: readonly string[];
    }
  | { readonly kind: "waiting" }
  | { readonly kind: "down" }
  /** Refused or doubted: the row tells it when the recipe is asked for. */
  | { readonly kind: "held"; readonly text: string }
  | { readonly kind: "no_factor" }
  | { readonly kind: "disagree" }
  | { readonly kind: "ready"; readonly result: PlanCheckResult; readonly recipe: Recipe };

/** A place that has to be filled, by the path under which pycore knows it. */
export interface Missing {
  readonly path: string;
  readonly name: string;
}

export const LOOK_PATH = "look";
export const PATHS = {
  dip: "body.dip.depth",
  clean_side: "body.dip.clean_side",
  reading: "body.reading.shows",
  warmth: "body.reading.temperature",
} as const;

export function missingOf({ machine, body }: MachineEntry, walk: Walk): readonly Missing[] {
  const typed = body.machine;
  const all: readonly (Missing & { readonly isOpen: boolean })[] = [
    { path: LOOK_PATH, name: say("compact.look_field"), isOpen: !isLooked(machine) },
    { path: PATHS.dip, name: dipName(typed), isOpen: walk.dip.trim() === "" },
    {
      path: PATHS.clean_side,
      name: say("field.clean_side"),
      isOpen: dipSteps(typed).includes("clean_side") && walk.cleanSide.trim() === "",
    },
    { path: PATHS.reading, name: say("field.reading"), isOpen: walk.reading.trim() === "" },
  ];
  return all.filter(({ isOpen }) => isOpen);
}

function refused({ code, path }: DeskError): View {
  if (code === "no_factor") return { kind: "no_factor" };
  return { kind: "held", text: say("compact.refused", { field: fieldFromPath(path).name }) };
}

function recipeView(result: PlanCheckResult): View {
  const recipe = recipeOf(result);
  if (recipe === null || !secondLook(result.shown, recipe).agrees) return { kind: "disagree" };
  return { kind: "ready", result, recipe };
}

type Found = Answer<{ doubts?: PlanCheckResult["doubts"] }> | null;

/**
 * Only answers to what stands in the fields now: an older one is null from the first key on. The recipe's
 * own answer has read both numbers too and waits for neither of the rows'.
 */
function viewOf(
  missing: readonly Missing[],
  parts: readonly Found[],
  plan: Answer<PlanCheckResult> | null,
  byLog: readonly Doubt[],
  kept: readonly string[],
): View {
  const all = [plan, ...parts];
  if (all.some((answer) => answer?.kind === "down")) return { kind: "down" };
  if (missing.length > 0)
    return {
      kind: "missing",
      names: missing.map(({ name }) => name),
      paths: missing.map(({ path }) => path),
    };
  const refusal = all.find((answer) => answer?.kind === "error");
  if (refusal?.kind === "error") return refused(refusal.error);
  if (plan?.kind !== "ok") return { kind: "waiting" };
  const doubts = all.flatMap((answer) =>
    answer?.kind === "ok" ? (answer.result.doubts ?? []) : [],
  );
  const [doubt] = openDoubts([...doubts, ...byLog], kept);
  if (doubt === undefined) return recipeView(plan.result);
  const field = startLarge(fieldFromPath(doubt.path).name);
  return { kind: "held", text: say("compact.unusual", { Field: field, got: write(doubt.got) }) };
}

export function useLive(machine: MachineEntry, walk: Walk, { found }: LevelChange) {
  const typed = machine.body.machine;
  const missing = missingOf(machine, walk);
  const isDipped = walk.dip.trim() !== "";
  const isRead = walk.reading.trim() !== "";
  // Asked first: the rows can wait for the recipe.
  const { answer: plan, ahead } = useAnswerAhead(
    "plan_check",
    missing.length === 0 ? planBody(typed, walk) : null,
  );
  const dip = useAnswer(
    "assess_sump",
    isDipped ? assessBody(typed, walk, { dip: true, reading: false }) : null,
  );
  const reading = useAnswer(
    "assess_sump",
    isRead ? assessBody(typed, walk, { dip: false, reading: true }) : null,
  );
  return {
    missing,
    /** A key is held that will make this of the walk. */
    soon: (next: Walk): void => {
      if (missingOf(machine, next).length === 0) ahead(planBody(typed, next));
    },
    level: dip?.kind === "ok" ? dip.result : null,
    strength: reading?.kind === "ok" ? reading.result : null,
    view: viewOf(missing, [dip, reading], plan, found?.doubts ?? [], walk.kept),
  };
}

export type Live = ReturnType<typeof useLive>;

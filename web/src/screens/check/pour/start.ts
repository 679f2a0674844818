// From a saved recipe to its first step: the plan goes into the log first, so that a hand-over knows of
// the pour even when this phone dies.
import { useState } from "preact/hooks";
import type { PlanContent } from "../../../store/written/deed";
import type { CheckEntry } from "../../../store/log/entry";
import { newId } from "../../../store/log/ids";
import { recentDeeds, save } from "../../../store/log/journal";
import { mode } from "../../../store/phone/mode";
import { beginPouring, pouringOf } from "../../../store/underway/pouring";
import { isoWithOffset } from "../../../words/times";
import { useCore } from "../../core";
import { go } from "../../route";
import { readVersions } from "../../versions";
import { storedRecipe, type Recipe } from "../recipe/chosen";
import type { Saving } from "../save";
import { plannedRows, typedFrom } from "./steps";

/** The recipe of a check, where there is something to pour by the bucket. */
export function pourable(check: CheckEntry): Recipe | null {
  const recipe = storedRecipe(check);
  return recipe === null || recipe.buckets === 0 ? null : recipe;
}

/** Whether somebody has begun to pour the recipe of this check already. */
export function isBegun(check: CheckEntry): boolean {
  return recentDeeds.value.some((deed) => deed.kind === "plan" && deed.body.check === check.id);
}

export function useStart(check: CheckEntry, recipe: Recipe) {
  const core = useCore();
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const [prepared, setPrepared] = useState<PlanContent | null>(null);
  const prepare = async (): Promise<PlanContent> => {
    const now = isoWithOffset(new Date());
    const { takeOut } = recipe;
    return {
      id: newId(),
      kind: "plan",
      machine: check.machine,
      measured_at: now,
      wall: now,
      body: {
        check: check.id,
        pours: plannedRows(recipe),
        ...(takeOut === null ? {} : { draw_off: typedFrom(takeOut) }),
      },
      versions: await readVersions(core),
    };
  };
  const begin = async (): Promise<void> => {
    setSaving({ kind: "saving" });
    const plan = prepared ?? (await prepare());
    setPrepared(plan);
    const outcome = await save(plan);
    if (outcome.kind === "not_saved") {
      setSaving({ kind: "not_saved", trouble: outcome.trouble });
      return;
    }
    if (!beginPouring(check.machine, check.id, plan, mode.value === "compact")) {
      setSaving({ kind: "not_saved", trouble: "full" });
      return;
    }
    go("machines", check.machine, "pour");
  };
  return {
    saving,
    start: (): void => {
      const now = pouringOf(check.machine).value;
      if (saving.kind === "saving") return;
      // Two pours at one machine cannot be told apart: the older one is closed first.
      if (now !== null)
        go("machines", check.machine, "pour", ...(now.check === check.id ? [] : ["stop"]));
      else void begin();
    },
  };
}

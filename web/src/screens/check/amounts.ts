// What goes into one bucket, in words: water and concentrate, own coolant, or a ready mix.
import type { PourShown } from "../../core/messages";
import { write } from "../../words/numbers";
import { say } from "../../words/say";

export function amountsOf(pour: PourShown): string {
  const blanks = { water: write(pour.water), concentrate: write(pour.concentrate) };
  if (pour.kind === "ready_mix") return say("recipe.ready_mix", { total: write(pour.total) });
  if (pour.fluid !== undefined)
    return say("recipe.own_fluid", { ...blanks, fluid: write(pour.fluid) });
  if (pour.concentrate.value === 0) return say("recipe.water_only", blanks);
  return pour.water.value === 0
    ? say("recipe.concentrate_only", blanks)
    : say("recipe.both", blanks);
}

// What goes into one bucket, in words: water and concentrate, own coolant, or a ready mix.
import type { PourShown } from "../../core/messages";
import { write } from "../../words/numbers";
import { say, type Blanks, type Key } from "../../words/say";

/** The sentence and what stands in it, for a page that draws its numbers large. */
export function amountWords(pour: PourShown): readonly [Key, Blanks] {
  const blanks = { water: write(pour.water), concentrate: write(pour.concentrate) };
  if (pour.kind === "ready_mix") return ["recipe.ready_mix", { total: write(pour.total) }];
  if (pour.fluid !== undefined)
    return ["recipe.own_fluid", { ...blanks, fluid: write(pour.fluid) }];
  if (pour.concentrate.value === 0) return ["recipe.water_only", blanks];
  return [pour.water.value === 0 ? "recipe.concentrate_only" : "recipe.both", blanks];
}

export function amountsOf(pour: PourShown): string {
  return say(...amountWords(pour));
}

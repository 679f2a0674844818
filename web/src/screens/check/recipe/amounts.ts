// What goes into one bucket, in words: water and concentrate, own coolant, or a ready mix.
import type { PourShown, Shown } from "../../../core/messages";
import { write } from "../../../words/numbers";
import { say, type Blanks, type Key } from "../../../words/say";

/** How an amount is put into a sentence: with its sign to be read, or with its unit's name to be heard. */
export type Writer = (amount: Shown) => string;

/** The sentence and what stands in it, for a page that draws its numbers large. */
export function amountWords(pour: PourShown, put: Writer = write): readonly [Key, Blanks] {
  const blanks = { water: put(pour.water), concentrate: put(pour.concentrate) };
  if (pour.kind === "ready_mix") return ["recipe.ready_mix", { total: put(pour.total) }];
  if (pour.fluid !== undefined) return ["recipe.own_fluid", { ...blanks, fluid: put(pour.fluid) }];
  if (pour.concentrate.value === 0) return ["recipe.water_only", blanks];
  return [pour.water.value === 0 ? "recipe.concentrate_only" : "recipe.both", blanks];
}

export function amountsOf(pour: PourShown, put: Writer = write): string {
  return say(...amountWords(pour, put));
}

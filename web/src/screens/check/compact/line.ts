// A recipe in one line that people remember, and where it leads; in pieces for the page, whole for the voice.
import { write, writeNumber } from "../../../words/numbers";
import { say, sayCount, sayCountPieces, sayPieces, type Piece } from "../../../words/say";
import { amountWords, amountsOf } from "../recipe/amounts";
import type { Recipe } from "../recipe/chosen";

/** The first kind of bucket; empty where none is filled. */
export function mainLine({ pours }: Recipe): readonly Piece[] {
  const [first] = pours;
  if (first === undefined) return [];
  const [key, blanks] = amountWords(first);
  return sayCountPieces("compact.buckets", first.count, { amounts: sayPieces(key, blanks) });
}

/** What comes before the first bucket. */
export function linesBefore({ takeOut, runIn, setting }: Recipe): readonly string[] {
  const out = takeOut === null ? [] : [say("compact.out", { amount: write(takeOut) })];
  if (runIn === null) return out;
  const amount = write(runIn);
  const run =
    setting === null
      ? say("compact.run_in", { amount })
      : say("compact.mix_in", { amount, setting: write(setting) });
  return [...out, run];
}

/** The other kinds of bucket, and where the pump runs between them. */
export function linesAfter({ pours, halfWay }: Recipe): readonly string[] {
  const rest = pours
    .slice(1)
    .map((pour) => sayCount("recipe.plus", pour.count, { amounts: amountsOf(pour) }));
  if (halfWay === null) return rest;
  const stop = say("recipe.half_way", { minutes: String(halfWay.minutes) });
  return [...rest.slice(0, halfWay.after - 1), stop, ...rest.slice(halfWay.after - 1)];
}

export function rangeLine({ strength, low, high }: Recipe): string {
  return say("compact.range", {
    strength: write(strength),
    low: writeNumber(low),
    high: write(high),
  });
}

export function spokenRecipe(recipe: Recipe): string {
  const main = mainLine(recipe)
    .map(({ text }) => text)
    .join("");
  return [...linesBefore(recipe), main, ...linesAfter(recipe), rangeLine(recipe)]
    .filter((line) => line !== "")
    .join(". ")
    .replaceAll("..", ".");
}

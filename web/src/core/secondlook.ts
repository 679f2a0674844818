// A second look at a recipe, with nothing of pycore in it: from the digits that the page shows it
// works the balance out again. What it finds is compared with what the recipe promises.
import type { PlanCheckResult, Shown } from "./messages";

/** Litres in one unit: NIST SP 811, appendix B.8, and NIST Handbook 44, appendix C. */
const LITRES: Readonly<Record<string, number>> = {
  L: 1,
  mL: 0.001,
  "US gal": 3.785411784,
  "US qt": 0.946352946,
  "US pt": 0.473176473,
  "US fl oz": 0.0295735295625,
  "imp gal": 4.54609,
  "imp qt": 1.1365225,
  "imp pt": 0.56826125,
  "imp fl oz": 0.0284130625,
};

export interface SecondLook {
  readonly agrees: boolean;
  readonly found_pct: number;
}

function litres(shown: Shown): number {
  return shown.value * (LITRES[shown.unit] ?? NaN);
}

/** Half of the last digit that is shown: what rounding can have taken away or added. */
function rounding(shown: Shown): number {
  return 0.5 * 10 ** -shown.decimals;
}

/** Amounts to pour are shown with every decimal they have, up to three: "6 L" is just 6 L. */
const AMOUNT_ROUNDING = 0.0005;

export function secondLook({ shown }: Pick<PlanCheckResult, "shown">): SecondLook {
  let volume_l = litres(shown.now_volume) - litres(shown.take_out);
  const before_l = volume_l;
  let concentrate_l = (volume_l * shown.now_strength.value) / 100;
  let blur_l = 0;
  for (const pour of shown.pours) {
    volume_l += pour.count * (litres(pour.water) + litres(pour.concentrate));
    concentrate_l += pour.count * litres(pour.concentrate);
    for (const amount of [pour.water, pour.concentrate]) {
      blur_l += pour.count * AMOUNT_ROUNDING * (LITRES[amount.unit] ?? NaN);
    }
  }
  // An empty sump into which nothing goes has no strength of its own to compare.
  if (volume_l <= 0 && before_l <= 0) return { agrees: true, found_pct: shown.strength.value };
  const found_pct = (100 * concentrate_l) / volume_l;
  blur_l += rounding(shown.now_volume) * (LITRES[shown.now_volume.unit] ?? NaN);
  const allowed =
    rounding(shown.strength) + rounding(shown.now_strength) + (100 * blur_l) / volume_l;
  // Written so that a missing number counts as disagreement.
  return { agrees: Math.abs(found_pct - shown.strength.value) <= allowed + 1e-9, found_pct };
}

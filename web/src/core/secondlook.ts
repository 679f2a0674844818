// A second look at a recipe, with nothing of pycore in it: from the digits that the page shows it
// works the balance out again. What it finds is compared with what the recipe promises.
import type { PourShown, Shown } from "./messages";

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

/** The digits of one recipe as they stand on the page. */
export interface Digits {
  readonly verdict: string;
  readonly pours: readonly PourShown[];
  readonly takeOut: Shown | null;
  readonly runIn: Shown | null;
  readonly setting: Shown | null;
  readonly level: Shown | null;
  readonly levelStrength: Shown | null;
  readonly strength: Shown;
  readonly volume: Shown;
}

/** The digits that stand for the sump now, and the band. */
export interface Start {
  readonly now_volume: Shown;
  readonly now_strength: Shown;
  readonly band_low: Shown;
  readonly band_high: Shown;
  /** What does not show on the stick; it counts in the balance. */
  readonly hidden?: Shown;
}

export interface SecondLook {
  readonly agrees: boolean;
  readonly found_pct: number;
}

/** Litres of coolant and of the concentrate in it, and how many litres rounding may have moved. */
interface Tank {
  readonly volume_l: number;
  readonly concentrate_l: number;
  readonly blur_l: number;
}

/** A missing number and an unknown unit give NaN, which agrees with nothing. */
function litres(shown: Shown): number {
  return shown.value * unit_l(shown);
}

function unit_l({ unit }: Shown): number {
  return LITRES[unit] ?? NaN;
}

/** Half of the last digit that is shown: what rounding can have taken away or added. */
function rounding(shown: Shown): number {
  return 0.5 * 10 ** -shown.decimals;
}

/** Amounts to pour are shown with every decimal they have, up to three: "6 L" is just 6 L. */
const AMOUNT_ROUNDING = 0.0005;

/** The sump's own fluid comes out and goes back, so only its concentrate is new. */
function poured(tank: Tank, pour: PourShown): Tank {
  const concentrate_l = pour.count * litres(pour.concentrate);
  const amounts = [pour.water, pour.concentrate];
  const blur_l = amounts.reduce((sum, amount) => sum + AMOUNT_ROUNDING * unit_l(amount), 0);
  return {
    volume_l: tank.volume_l + pour.count * litres(pour.water) + concentrate_l,
    concentrate_l: tank.concentrate_l + concentrate_l,
    blur_l: tank.blur_l + pour.count * blur_l,
  };
}

/** Water by the hose, or a mix of one setting by the mixing unit. */
function runIn(tank: Tank, amount: Shown, setting: Shown | null): Tank {
  const volume_l = litres(amount);
  const mix_pct = setting === null ? 0 : setting.value;
  return {
    volume_l: tank.volume_l + volume_l,
    concentrate_l: tank.concentrate_l + (volume_l * mix_pct) / 100,
    blur_l: tank.blur_l + AMOUNT_ROUNDING * unit_l(amount),
  };
}

function tankBefore(start: Start, takeOut: Shown | null): Tank {
  const out_l = takeOut === null ? 0 : litres(takeOut);
  const volume_l = litres(start.now_volume) - out_l;
  return {
    volume_l,
    concentrate_l: (volume_l * start.now_strength.value) / 100,
    blur_l: rounding(start.now_volume) * unit_l(start.now_volume),
  };
}

/** Water evaporates and concentrate stays: a level to wait for has its strength by that alone. */
function waits(start: Start, level: Shown, strength: Shown): SecondLook {
  const hidden_l = start.hidden === undefined ? 0 : litres(start.hidden);
  const held_l = (litres(start.now_volume) * start.now_strength.value) / 100;
  const half_l = rounding(level) * unit_l(level);
  const pctAt = (level_l: number): number => (100 * held_l) / (level_l + hidden_l);
  const found_pct = pctAt(litres(level));
  // A rounded level stands for a range, and few litres make the range of strengths a crooked one.
  const slack = rounding(strength) + rounding(start.now_strength);
  const agrees =
    strength.value >= pctAt(litres(level) + half_l) - slack - 1e-9 &&
    strength.value <= pctAt(litres(level) - half_l) + slack + 1e-9;
  return { agrees, found_pct };
}

export function secondLook(start: Start, digits: Digits): SecondLook {
  if (digits.level !== null && digits.levelStrength !== null)
    return waits(start, digits.level, digits.levelStrength);
  const before = tankBefore(start, digits.takeOut);
  const filled = digits.runIn === null ? before : runIn(before, digits.runIn, digits.setting);
  const { volume_l, concentrate_l, blur_l } = digits.pours.reduce(poured, filled);
  // An empty sump into which nothing goes has no strength of its own to compare.
  if (volume_l <= 0 && before.volume_l <= 0)
    return { agrees: true, found_pct: digits.strength.value };
  const found_pct = (100 * concentrate_l) / volume_l;
  const moved = rounding(start.now_strength) + (100 * blur_l) / volume_l;
  const isNear =
    Math.abs(found_pct - digits.strength.value) <= rounding(digits.strength) + moved + 1e-9;
  const isInside =
    found_pct >= start.band_low.value - moved - AMOUNT_ROUNDING &&
    found_pct <= start.band_high.value + moved + AMOUNT_ROUNDING;
  const volumeSlack_l = rounding(digits.volume) * unit_l(digits.volume) + blur_l;
  const isFull = Math.abs(volume_l - litres(digits.volume)) <= volumeSlack_l + 1e-9;
  // Written so that a missing number counts as disagreement.
  return { agrees: isNear && isFull && (isInside || digits.verdict === "out_of_band"), found_pct };
}

/**
 * Without a reading nobody knows the strength in the sump: the litres are added up again, and so is
 * the mix that goes in.
 */
export function addsUp(
  now: Shown,
  pours: readonly PourShown[],
  promised: Shown,
  mix: Shown | undefined,
): boolean {
  const before = { volume_l: litres(now), concentrate_l: 0, blur_l: rounding(now) * unit_l(now) };
  const after = pours.reduce(poured, before);
  const slack_l = rounding(promised) * unit_l(promised) + after.blur_l;
  const isFull = Math.abs(after.volume_l - litres(promised)) <= slack_l + 1e-9;
  return isFull && (pours.length === 0 || isMix(pours, mix));
}

/** Buckets without a promised strength agree with nothing. */
function isMix(pours: readonly PourShown[], mix: Shown | undefined): boolean {
  if (mix === undefined) return false;
  const nothing = { volume_l: 0, concentrate_l: 0, blur_l: 0 };
  const { volume_l, concentrate_l, blur_l } = pours.reduce(poured, nothing);
  const slack_pct = rounding(mix) + (100 * blur_l) / volume_l;
  return Math.abs((100 * concentrate_l) / volume_l - mix.value) <= slack_pct + 1e-9;
}

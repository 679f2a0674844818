// The trend in plain sentences: the same numbers as in the chart and the table.
import type { TrendResult } from "../../core/messages";
import { cleanOutReason } from "../../words/codes";
import { write, writeCount } from "../../words/numbers";
import { say, sayCount, type CountKey } from "../../words/say";
import { writeDay } from "../../words/times";

type Direction = Exclude<NonNullable<TrendResult["strength"]>["direction"], "too_few">;

const MOVES: Readonly<Record<Direction, CountKey>> = {
  rising: "trend.rose",
  falling: "trend.fell",
  rising_little: "trend.rising_little",
  falling_little: "trend.falling_little",
  level: "trend.level",
  unsure: "trend.unsure",
};

/** How the strength went, and how often it was outside. */
export function strengthSentences({ strength }: TrendResult): readonly string[] {
  if (strength === undefined) return [say("trend.none")];
  const { readings, below, above, direction, shown } = strength;
  const days = Math.max(1, Math.round(strength.over_d));
  const ends = {
    first: write(shown.first),
    last: write(shown.last),
    error: shown.error === undefined ? "" : write(shown.error),
    all: writeCount(readings),
  };
  const first =
    direction === "too_few"
      ? sayCount("trend.too_few", readings)
      : sayCount(MOVES[direction], days, ends);
  const out = [
    ...(below > 0 ? [say("trend.below", { n: writeCount(below), ...ends })] : []),
    ...(above > 0 ? [say("trend.above", { n: writeCount(above), ...ends })] : []),
  ];
  const isIn = direction !== "too_few" && out.length === 0;
  return [
    first,
    ...out,
    ...(isIn ? [sayCount("trend.all_in", readings)] : []),
    ...(shown.added === undefined ? [] : [say("trend.added", { added: write(shown.added) })]),
  ];
}

/** What leaves the sump in a day, as far as the log can tell. */
export function lossSentences({ losses }: TrendResult): readonly string[] {
  const { shown, steps, needed } = losses;
  if (losses.lost_l_d === undefined)
    return steps < needed
      ? [sayCount("trend.steps", steps, { needed: String(needed) })]
      : [say("trend.too_short")];
  const { lost, lost_low, lost_high, carry_out, carry_out_low, carry_out_high } = shown;
  const { evaporation, evaporation_low, evaporation_high } = shown;
  if (lost === undefined || lost_low === undefined || lost_high === undefined)
    return [say("trend.no_loss")];
  const said = say("trend.lost", {
    lost: write(lost),
    low: write(lost_low),
    high: write(lost_high),
  });
  const isParted =
    evaporation !== undefined &&
    evaporation_low !== undefined &&
    evaporation_high !== undefined &&
    carry_out !== undefined &&
    carry_out_low !== undefined &&
    carry_out_high !== undefined;
  if (!isParted) return [said, say("trend.not_parted")];
  const air = { low: write(evaporation_low), high: write(evaporation_high) };
  const parts = { low: write(carry_out_low), high: write(carry_out_high) };
  return [
    said,
    say("trend.evaporation", { lost: write(evaporation), ...air }),
    say("trend.carry_out", { lost: write(carry_out), ...parts }),
  ];
}

export function topUpSentence({ losses }: TrendResult): string | null {
  const { top_up, top_up_low, top_up_high, aim } = losses.shown;
  if (top_up === undefined || top_up_low === undefined || top_up_high === undefined) return null;
  return say("trend.top_up", {
    strength: write(top_up),
    low: write(top_up_low),
    high: write(top_up_high),
    aim: aim === undefined ? "" : write(aim),
  });
}

/** Checks that the balance had to leave out, and why. */
export function leftOutSentences({ losses }: TrendResult): readonly string[] {
  return losses.left_out.map(({ why, count }) => sayCount(`trend.out_${why}`, count));
}

export function nextCheckSentence({ next_check: next }: TrendResult): string {
  if (next === undefined) return say("trend.next_first");
  if (next.resting) return say("trend.next_resting");
  if (next.why === "out_of_band") return say("trend.next_out");
  const day = writeDay(new Date(next.due_s * 1000).toISOString());
  if (next.why === "interval") {
    const key = next.overdue ? "trend.next_overdue" : "trend.next_interval";
    return sayCount(key, next.every_d, { day });
  }
  return say(next.overdue ? "trend.next_drift_now" : `trend.next_${next.why}`, { day });
}

export function cleanOutSentences({ clean_out: clean }: TrendResult): readonly string[] {
  const age =
    clean.age_d === undefined
      ? say("trend.clean_never")
      : sayCount("trend.clean_age", Math.floor(clean.age_d));
  return [age, ...clean.reasons.map(cleanOutReason)];
}

// From what was read to the per cent, in one line and the steps between, all of them from pycore.
import type { AssessSumpResult, ReadingTyped } from "../../../core/messages";
import { write, writeNumber } from "../../../words/numbers";
import { say, sayCount } from "../../../words/say";

/** Reading, factor and per cent; where zero, warmth, dilution or scale come between, what they left. */
export function formula(result: AssessSumpResult | null): string {
  const shown = result?.strength?.shown;
  if (shown === undefined) return "";
  const { reading, mean, corrected, factor, strength, worked_out: exact } = shown;
  if (factor === undefined || strength === undefined) return say("reading.no_factor");
  // As many digits as make the line true, or "about": a line that is wrong by a digit is not trusted.
  const end =
    exact === undefined ? say("reading.about", { strength: write(strength) }) : write(exact);
  const blanks = { factor: write(factor), strength: end };
  if (corrected === undefined)
    return say("reading.formula", { ...blanks, reading: writeNumber(mean ?? reading) });
  return say("reading.formula_from", {
    ...blanks,
    shows: write(mean ?? reading),
    reading: write(corrected),
  });
}

/** What was done to the reading before the factor, each step as a sentence. */
export function readingDetails(
  result: AssessSumpResult | null,
  reading: Pick<ReadingTyped, "again" | "diluted">,
): readonly string[] {
  const shown = result?.strength?.shown;
  if (shown === undefined) return [];
  const { mean, zero, temperature_change: change } = shown;
  const count = (reading.again?.length ?? 0) + 1;
  return [
    ...(mean === undefined ? [] : [sayCount("reading.mean", count, { mean: write(mean) })]),
    ...(zero === undefined ? [] : [say("reading.zero_off", { zero: write(zero) })]),
    ...(change === undefined ? [] : [say("reading.warmth", { change: write(change) })]),
    ...(reading.diluted === undefined ? [] : [say("reading.doubled")]),
  ];
}

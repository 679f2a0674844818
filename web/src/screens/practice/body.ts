// What is asked about a dealt sump: its check and what was worked out so far, as text.
import type {
  DealPracticeResult,
  JudgePracticeBody,
  OwnBucketTyped,
  PracticeAnswers,
  Unit,
} from "../../core/messages";
import {
  EMPTY_ROW,
  NUMBER_STEPS,
  type NumberStep,
  type OwnRow,
  type Practice,
  type PracticeStep,
} from "../../store/underway/practice";

export const unitOf = (step: NumberStep): Unit =>
  step === "strength" || step === "top_up" ? "%" : "L";

const isEmptyRow = (row: OwnRow): boolean =>
  [row.count, row.water, row.concentrate].every((text) => text.trim() === "");

function typedRow({ count, water, concentrate }: OwnRow): OwnBucketTyped {
  return {
    count: { text: count, unit: "1" },
    water: { text: water, unit: "L" },
    concentrate: { text: concentrate, unit: "mL" },
  };
}

/** Of several kinds of buckets those that are filled in; one alone is asked about also when empty. */
export function rowsOf({ rows }: Practice): readonly OwnRow[] {
  const given = rows.filter((row) => !isEmptyRow(row));
  return given.length > 0 ? given : [rows[0] ?? EMPTY_ROW];
}

/** What was worked out at these steps; where the solution was shown, the right number stands for it. */
function answersOf(practice: Practice, steps: readonly string[]): PracticeAnswers {
  const { texts, shown } = practice;
  const isOwn = (step: PracticeStep): boolean => steps.includes(step) && !shown.includes(step);
  const numbers = NUMBER_STEPS.filter((step) => isOwn(step) && (texts[step] ?? "").trim() !== "");
  return {
    ...Object.fromEntries(
      numbers.map((step) => [step, { text: texts[step] ?? "", unit: unitOf(step) }]),
    ),
    ...(isOwn("pours") ? { pours: rowsOf(practice).map(typedRow) } : {}),
  };
}

export function judgeBody(
  { check }: DealPracticeResult,
  practice: Practice,
  steps: readonly string[],
): JudgePracticeBody {
  return { check, answers: answersOf(practice, steps) };
}

/** The step itself and those before it: a later number that was mistyped is not asked about here. */
export function upTo(deal: DealPracticeResult, step: PracticeStep): readonly PracticeStep[] {
  return deal.steps.slice(0, deal.steps.indexOf(step) + 1);
}

// How a step came out: a mark and a word, then the right number, its working and the slip that has a name.
import type { JudgePracticeResult, StepJudged } from "../../core/messages";
import type { Practice } from "../../store/underway/practice";
import { write } from "../../words/numbers";
import { say } from "../../words/say";
import { slipLine, verdictLine, workedLine } from "./words";

export type Verdict = NonNullable<StepJudged["verdict"]> | "shown";

/** A tick, a tick beside a line, an arrow, a cross, an eye: told apart without colour. */
const MARKS: Readonly<Record<Verdict, string>> = {
  right: "M4 15l7 7L24 6",
  near: "M4 11l6 6L22 4M4 24h20",
  follows: "M4 14h18M15 6l8 8-8 8",
  off: "M6 6l16 16M22 6L6 22",
  shown: "M3 14c5-9 17-9 22 0c-5 9-17 9-22 0zM14 11v6",
};

export function VerdictMark({
  verdict,
  word,
}: {
  readonly verdict: Verdict;
  readonly word: string;
}) {
  return (
    <p class="verdict">
      <svg viewBox="0 0 28 28" width="28" height="28" aria-hidden="true">
        <path d={MARKS[verdict]} />
      </svg>
      <span>{word}</span>
    </p>
  );
}

interface StepVerdictProps {
  readonly step: StepJudged;
  readonly result: JudgePracticeResult;
  readonly level: Practice["level"];
  readonly withName?: boolean;
}

/** A top-up above the strongest mix has a word of its own: it is right and cannot be mixed. */
function AboveStrong({ step, result, level }: StepVerdictProps) {
  if (step.step !== "top_up" || level !== "band") return null;
  return <p>{say("practice.above_strong", { strong: write(result.working.strong) })}</p>;
}

export function StepVerdict(props: StepVerdictProps) {
  const { step, result, level, withName = false } = props;
  const verdict = step.verdict ?? "shown";
  const slip = slipLine(step.slip);
  const line = verdictLine(step);
  return (
    <section class="verdict-part" role="status">
      {withName ? <h2>{say(`practice.name.${step.step}`)}</h2> : null}
      <VerdictMark verdict={verdict} word={say(`practice.verdict.${verdict}`)} />
      {step.given !== undefined && verdict !== "right" ? (
        <p>{say("practice.yours", { given: write(step.given) })}</p>
      ) : null}
      {slip === null ? null : <p class="slip">{slip}</p>}
      {line === "" ? null : <p>{line}</p>}
      <p class="worked">{workedLine(step, result.working, level)}</p>
      <AboveStrong {...props} />
    </section>
  );
}

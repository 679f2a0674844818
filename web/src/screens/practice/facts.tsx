// What a step is worked out from: what stands at the machine, and the numbers of the steps before.
import type { DealPracticeResult, JudgePracticeResult, Typed } from "../../core/messages";
import type { NumberStep, Practice, PracticeStep } from "../../store/underway/practice";
import { write, writeTyped } from "../../words/numbers";
import { say } from "../../words/say";
import { unitOf } from "./body";

export interface Known {
  readonly deal: DealPracticeResult;
  readonly practice: Practice;
  /** Null while the calculator has not answered. */
  readonly result: JudgePracticeResult | null;
}

/** A person's own number, said to be theirs; where the solution was shown, the right one. */
function own({ practice, result }: Known, step: NumberStep): string {
  const text = practice.texts[step] ?? "";
  if (text.trim() !== "" && !practice.shown.includes(step))
    return say("practice.fact.own", { own: writeTyped({ text, unit: unitOf(step) }) });
  const right = result?.steps.find((one) => one.step === step)?.right;
  return right === undefined ? "" : write(right);
}

const typed = (value: Typed | undefined): string => (value === undefined ? "" : writeTyped(value));

function linesOf(step: PracticeStep, known: Known): readonly string[] {
  const { machine, dip, reading } = known.deal.check;
  const { sump, fluid, target, mixing, bucket } = machine;
  const depth = typed(sump.full_depth);
  const volume = typed(sump.full_volume);
  const aim = say("practice.fact.aim", {
    aim: typed(target.aim),
    low: typed(target.low),
    high: typed(target.high),
  });
  const strong = say("practice.fact.strong", { strong: typed(mixing.strong) });
  const inIt = say("practice.fact.in_it", {
    volume: own(known, "volume"),
    strength: own(known, "strength"),
  });
  const room = say("practice.fact.room", { room: own(known, "room") });
  const lines: Readonly<Record<PracticeStep, () => readonly string[]>> = {
    volume: () => [
      say("practice.fact.full", { depth, volume }),
      say("practice.fact.dip", { dip: typed(dip.depth) }),
    ],
    strength: () => [
      say("practice.fact.reading", { reading: typed(reading.shows) }),
      say("practice.fact.factor", { factor: typed(fluid.factor) }),
    ],
    room: () => [
      say("practice.fact.full_volume", { volume }),
      say("practice.fact.volume", { volume: own(known, "volume") }),
    ],
    take_out: () => [inIt, aim, strong],
    top_up: () => [inIt, room, aim],
    pours: () => [
      known.deal.steps.includes("take_out")
        ? say("practice.fact.take_out", { take_out: own(known, "take_out") })
        : room,
      known.deal.steps.includes("take_out")
        ? aim
        : say("practice.fact.top_up", { top_up: own(known, "top_up") }),
      say("practice.fact.bucket", {
        usable: typed(bucket.usable),
        water_mark: typed(bucket.water_mark),
      }),
      say("practice.fact.jug", { jug_mark: typed(bucket.jug_mark) }),
      strong,
      say("practice.fact.weak", { weak: typed(mixing.weak) }),
    ],
  };
  return lines[step]();
}

export function Facts({ step, known }: { readonly step: PracticeStep; readonly known: Known }) {
  return (
    <ul class="practice-facts" id="hint">
      {linesOf(step, known).map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

// The keys of a rough gauge: its five marks, and between each two of them. A lamp that shows only
// "low" and "full" is the widest of these.
import type { Walk } from "../../../store/underway/walk";
import { say } from "../../../words/say";

const MARKS: readonly (readonly [from: string, to: string])[] = [
  ["0", ""],
  ["0", "1/4"],
  ["1/4", ""],
  ["1/4", "1/2"],
  ["1/2", ""],
  ["1/2", "3/4"],
  ["3/4", ""],
  ["3/4", "1"],
  ["1", ""],
  ["0", "1"],
];

function wordOf(from: string, to: string): string {
  if (from === "0" && to === "1") return say("gauge.low_full");
  if (to !== "") return say("dip.between", { from: markOf(from), to: markOf(to) });
  return markOf(from);
}

function markOf(share: string): string {
  if (share === "0") return say("gauge.empty");
  return share === "1" ? say("gauge.full") : share;
}

type Shares = Pick<Walk, "dip" | "gaugeTo">;

interface PadProps {
  readonly walk: Shares;
  readonly change: (change: Partial<Shares>) => void;
}

export function GaugePad({ walk, change }: PadProps) {
  return (
    <div class="gauge-pad" role="group" aria-label={say("gauge.keys")}>
      {MARKS.map(([from, to]) => (
        <button
          key={`${from} ${to}`}
          type="button"
          class="gauge-key"
          aria-pressed={walk.dip.trim() === from && walk.gaugeTo === to}
          onClick={() => {
            change({ dip: from, gaugeTo: to });
          }}
        >
          {wordOf(from, to)}
        </button>
      ))}
    </div>
  );
}

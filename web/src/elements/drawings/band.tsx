// The machine's range as a hatched band, the coolant's strength as its shape, the aim as a line.
import type { State } from "../../words/codes";

interface BandProps {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly aim: number;
  readonly now: { readonly value: number; readonly state: State } | null;
  readonly words: {
    readonly low: string;
    readonly high: string;
    readonly aim: string;
    readonly now: string;
    readonly state: string;
  };
}

const WIDTH = 336;
const HEIGHT = 210;
const TOP = 22;
const FLOOR = 188;
const LEFT = 72;
const RIGHT = 148;
/** Two written values closer than this would cover each other. */
const APART = 24;

export function shapeAt(state: State, x: number, y: number): string {
  const at = `M${String(x)} ${String(y)}`;
  if (state === "weak") return `${at}m-12 -7h24l-12 19z`;
  if (state === "strong") return `${at}m0 -12l12 19h-24z`;
  return `${at}m0 -13l13 13l-13 13l-13 -13z`;
}

/** Pushes the lower of two labels down until both can be read. */
export function spread(upper: number, lower: number, least = APART): readonly [number, number] {
  const gap = lower - upper;
  if (gap >= least) return [upper, lower];
  const push = (least - gap) / 2;
  return [upper - push, lower + push];
}

export function Band({ name, low, high, aim, now, words }: BandProps) {
  const values = now === null ? [low, high] : [low, high, now.value];
  const margin = (high - low) * 0.25;
  const least = Math.min(...values) - margin;
  const most = Math.max(...values) + margin;
  const y = (value: number): number => FLOOR - ((value - least) / (most - least)) * (FLOOR - TOP);
  const [highText, lowText] = spread(y(high), y(low));
  return (
    <svg
      class="drawing band-drawing"
      viewBox={`0 0 ${String(WIDTH)} ${String(HEIGHT)}`}
      role="img"
      aria-label={name}
    >
      <path
        d={`M${String(LEFT)} ${String(TOP - 10)}V${String(FLOOR + 10)}M${String(RIGHT)} ${String(TOP - 10)}V${String(FLOOR + 10)}`}
        class="scribed"
      />
      <rect
        x={LEFT}
        y={y(high)}
        width={RIGHT - LEFT}
        height={y(low) - y(high)}
        fill="url(#band)"
        class="band-edge"
      />
      <text x={LEFT - 10} y={highText + 6} class="drawn-number" text-anchor="end">
        {words.high}
      </text>
      <text x={LEFT - 10} y={lowText + 6} class="drawn-number" text-anchor="end">
        {words.low}
      </text>
      <path d={`M${String(LEFT - 6)} ${String(y(aim))}H${String(RIGHT + 14)}`} class="aim-line" />
      <Labels
        aim={{ y: y(aim), word: words.aim }}
        now={now === null ? null : { y: y(now.value), word: words.now, state: words.state }}
      />
      {now === null ? null : (
        <path d={shapeAt(now.state, (LEFT + RIGHT) / 2, y(now.value))} class="now-shape" />
      )}
    </svg>
  );
}

interface Label {
  readonly y: number;
  readonly word: string;
}

interface LabelsProps {
  readonly aim: Label;
  readonly now: (Label & { readonly state: string }) | null;
}

/** The strength takes two lines, its own and the word of its state. */
function Labels({ aim, now }: LabelsProps) {
  const x = RIGHT + 20;
  const [aimY, nowY] = now === null ? [aim.y, aim.y] : apart(aim.y, now.y);
  return (
    <>
      <text x={x} y={aimY + 6} class="drawn-number aim-word">
        {aim.word}
      </text>
      {now === null ? null : (
        <>
          <text x={x} y={nowY + 6} class="drawn-number">
            {now.word}
          </text>
          <text x={x} y={nowY + 27} class="drawn-word">
            {now.state}
          </text>
        </>
      )}
    </>
  );
}

/** Keeps the aim's line and the two lines of the strength from covering each other. */
function apart(aim: number, now: number): readonly [number, number] {
  if (aim <= now) return spread(aim, now);
  const [upper, lower] = spread(now, aim, 2 * APART);
  return [lower, upper];
}

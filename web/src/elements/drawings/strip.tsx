// The machine's range lying on its side: where the coolant stands now, as its shape, and where the recipe
// leads, in brass with the likely range as a bar. The same hatch and shapes as the upright band.
import type { State } from "../../words/codes";
import { shapeAt, spread } from "./band";

interface StripProps {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  /** The ends of the range in words. */
  readonly words: { readonly low: string; readonly high: string };
  readonly now: { readonly value: number; readonly state: State } | null;
  readonly after: { readonly value: number; readonly low: number; readonly high: number };
}

const WIDTH = 320;
const HEIGHT = 38;
/** Room for half a shape, and for half a number below it. */
const SIDE = 30;
const TOP = 3;
const FLOOR = 21;
const MIDDLE = (TOP + FLOOR) / 2;
/** Two numbers closer than this would cover each other. */
const APART = 64;
const AFTER = 7;

export function Strip({ name, low, high, words, now, after }: StripProps) {
  const values = [low, high, after.low, after.high, ...(now === null ? [] : [now.value])];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const x = (value: number): number =>
    SIDE + ((value - least) / (most - least)) * (WIDTH - 2 * SIDE);
  const [lowX, highX] = spread(x(low), x(high), APART);
  return (
    <svg class="drawing strip" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={name}>
      <path d={`M6 ${MIDDLE}H${WIDTH - 6}`} class="scribed" />
      <rect x={x(low)} y={TOP} width={x(high) - x(low)} height={FLOOR - TOP} class="strip-band" />
      <rect
        x={x(low)}
        y={TOP}
        width={x(high) - x(low)}
        height={FLOOR - TOP}
        fill="url(#band)"
        class="band-edge"
      />
      <text x={lowX} y={HEIGHT - 2} class="drawn-number strip-number">
        {words.low}
      </text>
      <text x={highX} y={HEIGHT - 2} class="drawn-number strip-number">
        {words.high}
      </text>
      <path d={`M${x(after.low)} ${MIDDLE}H${x(after.high)}`} class="strip-likely" />
      {now === null ? null : (
        <path d={shapeAt(now.state, x(now.value), MIDDLE)} class="now-shape" />
      )}
      <circle cx={x(after.value)} cy={MIDDLE} r={AFTER} class="strip-after" />
    </svg>
  );
}

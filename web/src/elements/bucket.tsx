// One bucket to scale: dash lines are water, the solid brass band is concentrate, numbered in pouring order.
import type { PourShown } from "../core/messages";

const WIDTH = 60;
const HEIGHT = 64;
const TOP = 8;
const FLOOR = 60;
/** Half widths at the brim and at the floor: a pail is narrower below. */
const BRIM = 26;
const BASE = 19;
const MIDDLE = WIDTH / 2;
/** The usable fill ends a little under the brim. */
const USABLE = 0.94;

function yAt(share: number): number {
  return FLOOR - share * USABLE * (FLOOR - TOP);
}

function halfAt(y: number): number {
  return BASE + ((FLOOR - y) / (FLOOR - TOP)) * (BRIM - BASE);
}

function slice(low: number, high: number): string {
  const [a, b] = [yAt(low), yAt(high)];
  const corner = (y: number, side: 1 | -1): string =>
    `${String(MIDDLE + side * halfAt(y))} ${String(y)}`;
  return `M${corner(a, -1)}L${corner(b, -1)}L${corner(b, 1)}L${corner(a, 1)}Z`;
}

type Shares = Pick<PourShown, "water_share" | "concentrate_share">;

/** Too thin a slice cannot hold its number; the list beside it still has it. */
function Mark({
  low,
  high,
  number,
  kind,
}: {
  low: number;
  high: number;
  number: string;
  kind: string;
}) {
  if (yAt(low) - yAt(high) < 11) return null;
  return (
    <text
      x={MIDDLE}
      y={(yAt(low) + yAt(high)) / 2 + 5}
      class={`bucket-number bucket-number-${kind}`}
    >
      {number}
    </text>
  );
}

export function Bucket({ pour }: { readonly pour: Shares }) {
  const water = pour.water_share;
  const top = water + pour.concentrate_share;
  const wall = `M${String(MIDDLE - BRIM)} ${String(TOP)}L${String(MIDDLE - BASE)} ${String(FLOOR)}H${String(MIDDLE + BASE)}L${String(MIDDLE + BRIM)} ${String(TOP)}Z`;
  return (
    <svg class="bucket" viewBox={`0 0 ${String(WIDTH)} ${String(HEIGHT)}`} aria-hidden="true">
      {water > 0 ? <path d={slice(0, water)} class="bucket-water" /> : null}
      {water > 0 ? <path d={slice(0, water)} fill="url(#water)" /> : null}
      {top > water ? <path d={slice(water, top)} class="bucket-concentrate" /> : null}
      <path d={wall} class="bucket-wall" />
      <path
        d={`M${String(MIDDLE - BRIM - 2)} ${String(TOP)}H${String(MIDDLE + BRIM + 2)}`}
        class="bucket-wall"
      />
      <Mark low={0} high={water} number="1" kind="water" />
      <Mark low={water} high={top} number={water > 0 ? "2" : "1"} kind="concentrate" />
    </svg>
  );
}

/** More than this many buckets are counted, not drawn one by one. */
const MOST_DRAWN = 12;

export function BucketRow({
  pours,
  name,
}: {
  readonly pours: readonly PourShown[];
  readonly name: string;
}) {
  const all = pours.flatMap((pour, kind) =>
    Array.from({ length: Math.min(pour.count, MOST_DRAWN) }, () => ({ pour, kind })),
  );
  const count = pours.reduce((sum, pour) => sum + pour.count, 0);
  const drawn = count > MOST_DRAWN ? pours.map((pour, kind) => ({ pour, kind })) : all;
  return (
    <div class="bucket-row panel" role="img" aria-label={name}>
      {drawn.map(({ pour }, i) => (
        <span key={i} class="bucket-place">
          <Bucket pour={pour} />
          {count > MOST_DRAWN ? (
            <span class="bucket-times">{`× ${String(pour.count)}`}</span>
          ) : null}
        </span>
      ))}
    </div>
  );
}

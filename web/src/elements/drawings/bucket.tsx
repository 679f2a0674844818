// One bucket to scale: dash lines are water, the solid brass band is concentrate, numbered in pouring order.
import type { PourShown } from "../../core/messages";

const WIDTH = 68;
const HEIGHT = 64;
const TOP = 8;
const FLOOR = 60;
/** Half widths at the brim and at the floor: a pail is narrower below. */
const BRIM = 26;
const BASE = 19;
const MIDDLE = 28;
/** The usable fill ends a little under the brim. */
const USABLE = 0.94;

export function yAt(share: number): number {
  return FLOOR - share * USABLE * (FLOOR - TOP);
}

export function halfAt(y: number): number {
  return BASE + ((FLOOR - y) / (FLOOR - TOP)) * (BRIM - BASE);
}

export function slice(low: number, high: number): string {
  const [a, b] = [yAt(low), yAt(high)];
  const corner = (y: number, side: 1 | -1): string =>
    `${String(MIDDLE + side * halfAt(y))} ${String(y)}`;
  return `M${corner(a, -1)}L${corner(b, -1)}L${corner(b, 1)}L${corner(a, 1)}Z`;
}

type Shares = Pick<PourShown, "water_share" | "concentrate_share">;

/** Numbers closer than this would cover each other. */
const APART = 15;
/** What a number needs below its middle. */
const NUMBER_BELOW = 6;

/** The marks in pouring order stand beside the bucket, at the slice that each one fills. */
function Marks({ slices }: { readonly slices: readonly (readonly [low: number, high: number])[] }) {
  const [first, second] = slices.map(([low, high]) => (yAt(low) + yAt(high)) / 2);
  const push =
    first === undefined || second === undefined ? 0 : Math.max(0, APART - (first - second)) / 2;
  // A nearly empty bucket has no room for both below: then they move up together.
  const lowest = first === undefined ? undefined : Math.min(first + push, HEIGHT - NUMBER_BELOW);
  const places = [
    lowest,
    second === undefined || lowest === undefined
      ? undefined
      : Math.min(second - push, lowest - APART),
  ];
  return (
    <>
      {places.map((y, i) =>
        y === undefined ? null : (
          <text key={i} x={WIDTH - 6} y={y + 5} class="bucket-number">
            {i + 1}
          </text>
        ),
      )}
    </>
  );
}

export function Bucket({ pour }: { readonly pour: Shares }) {
  const water = pour.water_share;
  const top = water + pour.concentrate_share;
  const all = [
    [0, water],
    [water, top],
  ] as const;
  const slices = all.filter(([low, high]) => high > low);
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
      <Marks slices={slices} />
    </svg>
  );
}

/** More than this many buckets are counted, not drawn one by one. */
const MOST_DRAWN = 12;
const MOST_IN_A_ROW = 6;

interface BucketRowProps {
  readonly pours: readonly PourShown[];
  readonly name: string;
}

export function BucketRow({ pours, name }: BucketRowProps) {
  const count = pours.reduce((sum, pour) => sum + pour.count, 0);
  const isCounted = count > MOST_DRAWN;
  const drawn = pours.flatMap((pour) =>
    Array.from({ length: isCounted ? 1 : pour.count }, () => pour),
  );
  const columns = Math.min(drawn.length, MOST_IN_A_ROW);
  return (
    <div
      class="bucket-row panel"
      role="img"
      aria-label={name}
      style={{ gridTemplateColumns: `repeat(${columns}, minmax(0, 84px))` }}
    >
      {drawn.map((pour, i) => (
        <span key={i} class="bucket-place">
          <Bucket pour={pour} />
          {isCounted ? <span class="bucket-times">{`× ${pour.count}`}</span> : null}
        </span>
      ))}
    </div>
  );
}

// What stands on a section: the level sign, the full mark, the stick and the dip as a dimension.

/** A triangle standing on the surface with two short lines below it: "this is a level". */
export function LevelSign({ x, y }: { readonly x: number; readonly y: number }) {
  return (
    <g transform={`translate(${x} ${y})`} class="level">
      <path d="M-7 -12H7L0 -1z" class="level-sign" />
      <path d="M-5 5H5M-2.500 9H2.500" class="scribed" />
    </g>
  );
}

interface FullMarkProps {
  readonly path: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: "start" | "end";
  readonly word: string | undefined;
}

export function FullMark({ path, x, y, anchor, word }: FullMarkProps) {
  return (
    <>
      <path d={path} class="full-mark" />
      {word === undefined ? null : (
        <text x={x} y={y - 5} class="drawn-word" text-anchor={anchor}>
          {word}
        </text>
      )}
    </>
  );
}

interface StickProps {
  readonly x: number;
  readonly top: number;
  readonly foot: number;
}

export function Stick({ x, top, foot }: StickProps) {
  const marks = Array.from({ length: 9 }, (_, i) => foot - ((9 - i) * (foot - top)) / 10);
  const ticks = marks.map((y, i) => `M${x - 4} ${y}h${i % 2 === 0 ? "4" : "7"}`).join("");
  return (
    <>
      <rect x={x - 4} y={2} width={8} height={Math.max(0, foot - 2)} class="stick" />
      <path d={ticks} class="stick-marks" />
    </>
  );
}

interface DimensionProps {
  readonly x: number;
  /** The surface and the foot of the stick. */
  readonly y: number;
  readonly foot: number;
  readonly top: number;
  readonly floor: number;
  readonly text: { readonly number: string; readonly unit: string };
}

/** Beside a small tank there is room for four digits of full size. */
function sizeOf({ length }: string): string {
  if (length <= 4) return "dimension-number";
  return length <= 6 ? "dimension-number dimension-long" : "dimension-number dimension-longer";
}

export function Dimension({ x, y, foot, top, floor, text }: DimensionProps) {
  const mid = Math.max(top + 12, Math.min(floor - 14, (y + foot) / 2));
  return (
    <g class="dimension">
      <path d={`M${x - 6} ${y}h12M${x - 6} ${foot}h12M${x} ${y}V${foot}`} class="dimension-line" />
      {foot - y > 14 ? (
        <path
          d={`M${x - 3.5} ${y + 8}L${x} ${y}l3.500 8zM${x - 3.5} ${foot - 8}L${x} ${foot}l3.500 -8z`}
          class="dimension-tip"
        />
      ) : null}
      <text x={x + 6} y={mid} class={sizeOf(text.number)}>
        {text.number}
      </text>
      <text x={x + 6} y={mid + 15} class="dimension-unit">
        {text.unit}
      </text>
    </g>
  );
}

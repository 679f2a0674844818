// What the empty list shows: a sump with its parts named, so that the words of the questions are known.
import { say, type Key } from "../../words/say";
import { Walls, frameOf } from "./section";

interface Part {
  readonly key: Key;
  readonly y: number;
  readonly from: number;
}

const frame = frameOf("wide");
const FULL = frame.top + 34;
const LEVEL = frame.top + 78;
/** Pointers end in the drawing, words stand beside it. */
const INSIDE = frame.right - 12;
const OUTSIDE = frame.right + 14;
/** Wide enough for a letter of a bold, wide font. */
const LETTER = 11;

const PARTS: readonly Part[] = [
  { key: "parts.rim", y: frame.top, from: frame.right + 4 },
  { key: "parts.full", y: FULL, from: INSIDE },
  { key: "parts.level", y: LEVEL, from: INSIDE },
  { key: "parts.floor", y: frame.floor - 4, from: INSIDE },
];

export function EmptySump() {
  const x = frame.left + 60;
  const longest = Math.max(...PARTS.map(({ key }) => say(key).length));
  const width = OUTSIDE + LETTER * longest;
  return (
    <svg
      class="drawing section section-wide"
      viewBox={`0 0 ${width} ${frame.height}`}
      role="img"
      aria-label={say("parts.name")}
    >
      <path d={`M${frame.left} ${FULL}H${frame.right}`} class="full-mark" />
      <path d={`M${frame.left} ${LEVEL}H${frame.right}`} class="old-level" />
      <rect x={x} y={4} width={8} height={frame.floor - 4} class="stick" />
      <Walls frame={frame} />
      <text x={x + 16} y={frame.top + 22} class="drawn-word">
        {say("parts.stick")}
      </text>
      {PARTS.map(({ key, y, from }) => (
        <g key={key}>
          <path d={`M${OUTSIDE - 4} ${y}H${from}`} class="pointer" />
          <text x={OUTSIDE} y={y + 6} class="drawn-word">
            {say(key)}
          </text>
        </g>
      ))}
    </svg>
  );
}

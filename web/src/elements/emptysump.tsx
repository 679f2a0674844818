// What the empty list shows: a sump with its parts named, so that the words of the questions are known.
import { say, type Key } from "../words/say";
import { Walls, frameOf } from "./section";

interface Part {
  readonly key: Key;
  readonly x: number;
  readonly y: number;
  readonly to: string;
}

export function EmptySump() {
  const frame = frameOf("wide");
  const full = frame.top + 34;
  const level = frame.top + 78;
  const right = frame.right + 14;
  const parts: readonly Part[] = [
    {
      key: "parts.rim",
      x: right,
      y: frame.top + 6,
      to: `M${right - 4} ${frame.top}H${frame.right + 4}`,
    },
    { key: "parts.full", x: right, y: full + 6, to: `M${right - 4} ${full}H${frame.right - 12}` },
    {
      key: "parts.level",
      x: right,
      y: level + 6,
      to: `M${right - 4} ${level}H${frame.right - 12}`,
    },
    {
      key: "parts.floor",
      x: right,
      y: frame.floor + 2,
      to: `M${right - 4} ${frame.floor - 4}H${frame.right - 12}`,
    },
  ];
  const x = frame.left + 60;
  return (
    <svg
      class="drawing section section-wide"
      viewBox={`0 0 ${frame.width} ${frame.height}`}
      role="img"
      aria-label={say("parts.name")}
    >
      <path d={`M${frame.left} ${full}H${frame.right}`} class="full-mark" />
      <path d={`M${frame.left} ${level}H${frame.right}`} class="old-level" />
      <rect x={x} y={4} width={8} height={frame.floor - 4} class="stick" />
      <Walls frame={frame} />
      <text x={x + 16} y={frame.top + 22} class="drawn-word">
        {say("parts.stick")}
      </text>
      {parts.map(({ key, x: at, y, to }) => (
        <g key={key}>
          <path d={to} class="pointer" />
          <text x={at} y={y} class="drawn-word">
            {say(key)}
          </text>
        </g>
      ))}
    </svg>
  );
}

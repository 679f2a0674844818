// The cross-section of the sump, scribed on marking-out blue: hatched walls, the coolant's surface with
// the draughtsman's level sign, the dip as a dimension, concentrate as dots.
import type { Section } from "../core/messages";
import { placeDots } from "./dots";

export interface SectionProps {
  readonly name: string;
  readonly section: Section | null;
  /** The last known level, drawn dashed: an old level must not look like a new one. */
  readonly before?: Section | null;
  readonly dimension?: { readonly number: string; readonly unit: string } | undefined;
  readonly fullWord?: string | undefined;
  readonly stick?: boolean;
  readonly size?: keyof typeof SIZES;
}

const SIZES = {
  small: { width: 140, height: 104, gap: 54 },
  half: { width: 160, height: 112, gap: 10 },
  wide: { width: 336, height: 168, gap: 92 },
  broad: { width: 336, height: 168, gap: 6 },
} as const;
const WALL = 9;
const TOP = 16;
const DOT = 3.1;

export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly floor: number;
  readonly width: number;
  readonly height: number;
}

export function frameOf(size: keyof typeof SIZES): Frame {
  const { width, height, gap } = SIZES[size];
  return {
    left: 6 + WALL,
    right: width - gap - WALL,
    top: TOP,
    floor: height - 6 - WALL,
    width,
    height,
  };
}

function heightAt(frame: Frame, share: number): number {
  return frame.floor - share * (frame.floor - frame.top);
}

export function Walls({ frame }: { readonly frame: Frame }) {
  const { left, right, top, floor } = frame;
  const cut =
    `M${String(left - WALL)} ${String(top)}V${String(floor + WALL)}H${String(right + WALL)}V${String(top)}` +
    `H${String(right)}V${String(floor)}H${String(left)}V${String(top)}Z`;
  return (
    <>
      <path d={cut} fill="url(#cut)" />
      <path d={cut} class="scribed" />
    </>
  );
}

/** A triangle standing on the surface with two short lines below it: "this is a level". */
function LevelSign({ x, y }: { readonly x: number; readonly y: number }) {
  return (
    <g transform={`translate(${String(x)} ${String(y)})`}>
      <path d="M-7 -12H7L0 -1z" class="level-sign" />
      <path d="M-5 5H5M-2.500 9H2.500" class="scribed" />
    </g>
  );
}

function Coolant({ frame, section }: { readonly frame: Frame; readonly section: Section }) {
  const { left, right, floor } = frame;
  const y = heightAt(frame, section.level);
  const dots = placeDots(section.dots ?? 0);
  const inset = DOT + 2;
  return (
    <g class="coolant">
      <rect
        x={left}
        y={y}
        width={right - left}
        height={Math.max(0, floor - y)}
        class="coolant-fill"
      />
      {dots.map((dot, i) => (
        <circle
          key={i}
          r={DOT}
          class="dot"
          cx={left + inset + dot.x * (right - left - 2 * inset)}
          cy={y + inset + dot.y * Math.max(0, floor - y - 2 * inset)}
        />
      ))}
      <path d={`M${String(left)} ${String(y)}H${String(right)}`} class="surface" />
      <LevelSign x={left + 18} y={y} />
    </g>
  );
}

function FullMark({
  frame,
  share,
  word,
}: {
  readonly frame: Frame;
  readonly share: number;
  readonly word: string | undefined;
}) {
  const y = heightAt(frame, share);
  return (
    <>
      <path d={`M${String(frame.left)} ${String(y)}H${String(frame.right)}`} class="full-mark" />
      {word === undefined ? null : (
        <text x={frame.right - 6} y={y - 5} class="drawn-word" text-anchor="end">
          {word}
        </text>
      )}
    </>
  );
}

function Stick({ frame }: { readonly frame: Frame }) {
  const x = frame.left + (frame.right - frame.left) * 0.68;
  const marks = Array.from(
    { length: 9 },
    (_, i) => frame.top + ((i + 1) * (frame.floor - frame.top)) / 10,
  );
  const ticks = marks
    .map((y, i) => `M${String(x - 4)} ${String(y)}h${i % 2 === 0 ? "4" : "7"}`)
    .join("");
  return (
    <>
      <rect x={x - 4} y={2} width={8} height={frame.floor - 2} class="stick" />
      <path d={ticks} class="stick-marks" />
    </>
  );
}

function Dimension({
  frame,
  level,
  text,
}: {
  readonly frame: Frame;
  readonly level: number;
  readonly text: { number: string; unit: string };
}) {
  const x = frame.right + WALL + 9;
  const y = heightAt(frame, level);
  const mid = Math.max(frame.top + 12, Math.min(frame.floor - 14, (y + frame.floor) / 2));
  const tall = frame.floor - y > 14;
  return (
    <g class="dimension">
      <path
        d={`M${String(x - 6)} ${String(y)}h12M${String(x - 6)} ${String(frame.floor)}h12M${String(x)} ${String(y)}V${String(frame.floor)}`}
        class="dimension-line"
      />
      {tall ? (
        <path
          d={`M${String(x - 3.5)} ${String(y + 8)}L${String(x)} ${String(y)}l3.500 8zM${String(x - 3.5)} ${String(frame.floor - 8)}L${String(x)} ${String(frame.floor)}l3.500 -8z`}
          class="dimension-tip"
        />
      ) : null}
      <text x={x + 6} y={mid} class="dimension-number">
        {text.number}
      </text>
      <text x={x + 6} y={mid + 15} class="dimension-unit">
        {text.unit}
      </text>
    </g>
  );
}

export function SectionDrawing({
  name,
  section,
  before = null,
  dimension,
  fullWord,
  stick = false,
  size = "broad",
}: SectionProps) {
  const frame = frameOf(size);
  const mark = section ?? before;
  return (
    <svg
      class={`drawing section section-${size}`}
      viewBox={`0 0 ${String(frame.width)} ${String(frame.height)}`}
      role="img"
      aria-label={name}
    >
      {section === null ? null : <Coolant frame={frame} section={section} />}
      {mark === null ? null : <FullMark frame={frame} share={mark.full_mark} word={fullWord} />}
      {section !== null || before === null ? null : (
        <path
          d={`M${String(frame.left)} ${String(heightAt(frame, before.level))}H${String(frame.right)}`}
          class="old-level"
        />
      )}
      {stick ? <Stick frame={frame} /> : null}
      <Walls frame={frame} />
      {section === null || dimension === undefined ? null : (
        <Dimension frame={frame} level={section.level} text={dimension} />
      )}
    </svg>
  );
}

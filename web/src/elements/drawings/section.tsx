// The cross-section of the sump, scribed on marking-out blue: hatched walls, the coolant's surface with
// the draughtsman's level sign, the dip as a dimension, concentrate as dots.
import { useId } from "preact/hooks";
import type { Drawing, Section } from "../../core/messages";
import { Dimension, FullMark, LevelSign, Stick } from "./marks";
import {
  blocksOf,
  dotsIn,
  inProportion,
  spanAt,
  stickAt,
  wallPath,
  yAt,
  type Frame,
} from "./outline";

export interface SectionProps {
  readonly name: string;
  readonly section: Section | null;
  /** The last known level, drawn dashed: an old level must not look like a new one. */
  readonly before?: Section | null;
  /** Whether that level stays beside a new one. */
  readonly both?: boolean;
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
/** The level sign and the longest word at a mark stand side by side in this. */
const WORD = 150;

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

/** A plain box: what is drawn where the tank's own outline is not known. */
const PLAIN: Drawing = {
  outline: [
    { height_share: 0, left_share: 0, right_share: 1 },
    { height_share: 1, left_share: 0, right_share: 1 },
  ],
  blocks: [],
  zero_share: 0,
};

/** As much of a frame as its walls need. */
export type Walled = Pick<Frame, "left" | "right" | "top" | "floor">;

export function Walls({ frame }: { readonly frame: Walled }) {
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

interface TankProps {
  readonly frame: Frame;
  readonly drawing: Drawing;
}

/**
 * Walls along the outline: a wide hatched stroke whose inner half the inside of the tank covers, a little
 * beyond the rim, where the stroke's ends would shine through.
 */
function TankWalls({ frame, drawing }: TankProps) {
  const path = wallPath(frame, drawing);
  return (
    <>
      <path d={path} class="wall-edge" stroke-width={2 * WALL + 4} />
      <path d={path} class="wall-body" stroke-width={2 * WALL} />
      <path d={path} class="wall-cut" stroke="url(#cut)" stroke-width={2 * WALL} />
      <path d={`${path}v-1H${spanAt(frame, drawing, 1).left}Z`} class="inside" />
    </>
  );
}

function Blocks({ frame, drawing }: TankProps) {
  return (
    <>
      {blocksOf(frame, drawing).map((block, i) => (
        <g key={i}>
          <rect {...block} class="block" />
          <rect {...block} class="block-cut" fill="url(#cut)" />
        </g>
      ))}
    </>
  );
}

function Coolant({ frame, drawing, section }: TankProps & { readonly section: Section }) {
  const id = useId();
  const { left, right, floor } = frame;
  const y = yAt(frame, section.level);
  const dots = dotsIn(frame, drawing, section.level, section.dots ?? 0, DOT + 2);
  return (
    <g class="coolant">
      <clipPath id={id}>
        <path d={`${wallPath(frame, drawing)}Z`} />
      </clipPath>
      <g clip-path={`url(#${id})`}>
        <rect
          x={left}
          y={y}
          width={right - left}
          height={Math.max(0, floor - y)}
          class="coolant-fill"
        />
        <path d={`M${left} ${y}H${right}`} class="surface" />
      </g>
      {dots.map((dot, i) => (
        <circle key={i} r={DOT} class="dot" cx={dot.x} cy={dot.y} />
      ))}
    </g>
  );
}

function across(frame: Frame, drawing: Drawing, share: number): string {
  const { left, right } = spanAt(frame, drawing, share);
  return `M${left} ${yAt(frame, share)}H${right}`;
}

/** Where a mark lies, and where its word stands: inside, or beside a tank too narrow for it. */
function markAt(frame: Frame, drawing: Drawing, share: number) {
  const { left, right } = spanAt(frame, drawing, share);
  const isNarrow = right - left < WORD;
  return {
    path: across(frame, drawing, share),
    x: isNarrow ? right + 22 : right - 6,
    y: yAt(frame, share),
    anchor: isNarrow ? ("start" as const) : ("end" as const),
  };
}

interface InsideProps extends Pick<SectionProps, "section" | "fullWord" | "stick" | "both"> {
  readonly frame: Frame;
  readonly drawing: Drawing;
  readonly before: Section | null;
}

function Inside({ frame, drawing, section, before, both, fullWord, stick }: InsideProps) {
  const mark = section ?? before;
  const signAt = section === null ? null : spanAt(frame, drawing, section.level);
  return (
    <>
      {section === null ? null : <Coolant frame={frame} drawing={drawing} section={section} />}
      <Blocks frame={frame} drawing={drawing} />
      {mark === null ? null : (
        <FullMark {...markAt(frame, drawing, mark.full_mark)} word={fullWord} />
      )}
      {(section !== null && both !== true) || before === null ? null : (
        <path d={across(frame, drawing, before.level)} class="old-level" />
      )}
      {stick === true ? <Stick top={frame.top} {...stickAt(frame, drawing)} /> : null}
      <path d={wallPath(frame, drawing)} class="scribed" />
      {section === null || signAt === null ? null : (
        <LevelSign
          x={Math.min(signAt.left + 18, (signAt.left + signAt.right) / 2)}
          y={yAt(frame, section.level)}
        />
      )}
    </>
  );
}

export function SectionDrawing(props: SectionProps) {
  const { name, section, before = null, dimension, size = "broad" } = props;
  const drawing = section?.drawing ?? before?.drawing ?? PLAIN;
  const outer = frameOf(size);
  // Small drawings show the level beside a field; true proportions would leave a line of a flat tank.
  const isLarge = size === "wide" || size === "broad";
  const frame = isLarge ? inProportion(outer, drawing.aspect_share) : outer;
  return (
    <svg
      class={`drawing section section-${size}`}
      viewBox={`0 0 ${outer.width} ${outer.height}`}
      role="img"
      aria-label={name}
    >
      <TankWalls frame={frame} drawing={drawing} />
      <Inside {...props} frame={frame} drawing={drawing} before={before} />
      {section === null || dimension === undefined ? null : (
        <Dimension
          x={outer.right + WALL + 9}
          y={yAt(frame, section.level)}
          foot={yAt(frame, drawing.zero_share)}
          top={outer.top}
          floor={outer.floor}
          text={dimension}
        />
      )}
    </svg>
  );
}

// A tank's own outline in the drawing's own coordinates: where its walls are at a height, and where the
// dots stand between them.
import type { Drawing } from "../../core/messages";
import { placeDots } from "./dots";

/** The inside of the drawn tank. */
export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly floor: number;
  readonly width: number;
  readonly height: number;
}

interface Span {
  readonly left: number;
  readonly right: number;
}

export interface Block {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Flatter or narrower than this, nothing inside could be seen. */
const LEAST_PX = 56;
const SLICES = 48;

/** The largest box of the tank's own proportions that fits into the frame. */
export function inProportion(frame: Frame, aspect: number | undefined): Frame {
  if (aspect === undefined) return frame;
  const room = { x: frame.right - frame.left, y: frame.floor - frame.top };
  const width = Math.max(LEAST_PX, Math.min(room.x, room.y * aspect));
  const height = Math.min(room.y, Math.max(LEAST_PX, width / aspect));
  const left = frame.left + (room.x - width) / 2;
  return { ...frame, left, right: left + width, top: frame.floor - height };
}

function at(frame: Frame, { left_share, right_share }: Drawing["outline"][number]): Span {
  const width = frame.right - frame.left;
  return { left: frame.left + left_share * width, right: frame.left + right_share * width };
}

export function yAt(frame: Frame, share: number): number {
  return frame.floor - share * (frame.floor - frame.top);
}

/** The walls at a height, straight between two points of the outline; at a step the wider floor. */
export function spanAt(frame: Frame, { outline }: Drawing, share: number): Span {
  const above = outline.findIndex((point, i) => i > 0 && point.height_share > share);
  const high = outline[above < 0 ? outline.length - 1 : above];
  const low = outline[above < 0 ? outline.length - 1 : above - 1];
  if (high === undefined || low === undefined) return frame;
  const rise = high.height_share - low.height_share;
  const t = rise > 0 ? Math.max(0, Math.min(1, (share - low.height_share) / rise)) : 0;
  const [from, to] = [at(frame, low), at(frame, high)];
  return {
    left: from.left + t * (to.left - from.left),
    right: from.right + t * (to.right - from.right),
  };
}

/** Down the left wall, along the floor and up the right one; open at the rim. */
export function wallPath(frame: Frame, { outline }: Drawing): string {
  const points = outline.map((point) => ({
    ...at(frame, point),
    y: yAt(frame, point.height_share),
  }));
  const down = [...points].reverse().map(({ left, y }) => `${left} ${y}`);
  const up = points.map(({ right, y }) => `${right} ${y}`);
  return `M${[...down, ...up].join("L")}`;
}

/** What stands in the liquid, side by side from the right wall: where it really stands is not known. */
export function blocksOf(frame: Frame, drawing: Drawing): readonly Block[] {
  const all = frame.right - frame.left;
  let taken = 0;
  return drawing.blocks.map(({ from_share, to_share, width_share }) => {
    const width = width_share * all;
    const to = Math.min(1, to_share);
    const spans = [from_share, (from_share + to) / 2, to].map((s) => spanAt(frame, drawing, s));
    const right = Math.min(...spans.map((span) => span.right)) - 6 - taken;
    taken += width + 6;
    const left = Math.max(right - width, ...spans.map((span) => span.left));
    const y = yAt(frame, to);
    return { x: left, y, width: Math.max(2, right - left), height: yAt(frame, from_share) - y };
  });
}

/** Where the stick stands: on a floor that lies as high as its zero, nearest to its usual place. */
export function stickAt(frame: Frame, drawing: Drawing): { x: number; foot: number } {
  const width = frame.right - frame.left;
  const blocks = blocksOf(frame, drawing);
  const y = yAt(frame, drawing.zero_share);
  const fits = [0.68, 0.5, 0.32, 0.8, 0.16, 0.9, 0.06].map((share) => {
    const x = frame.left + share * width;
    const span = spanAt(frame, drawing, drawing.zero_share + 0.02);
    const outside = Math.max(0, span.left + 6 - x, x - span.right + 6);
    const isFree = blocks.every((block) => x < block.x - 6 || x > block.x + block.width + 6);
    return { x, off: outside + (isFree ? 0 : 20) };
  });
  const best = fits.reduce((found, next) => (next.off < found.off ? next : found));
  return { x: best.x, foot: y };
}

/** Dots spread evenly over the area of the coolant, so that a narrow floor does not look strong. */
export function dotsIn(
  frame: Frame,
  drawing: Drawing,
  level: number,
  count: number,
  inset: number,
): readonly { x: number; y: number }[] {
  const blocks = blocksOf(frame, drawing);
  const free = Array.from({ length: SLICES }, (_, i) => {
    const share = (level * (i + 0.5)) / SLICES;
    const span = spanAt(frame, drawing, share);
    const y = yAt(frame, share);
    const here = blocks.filter((block) => y >= block.y && y <= block.y + block.height);
    const right = Math.min(span.right, ...here.map((block) => block.x)) - inset;
    const left = span.left + inset;
    return { left, width: Math.max(0, right - left), y };
  }).filter((slice) => slice.y + inset <= frame.floor && slice.width > 0);
  const total = free.reduce((sum, slice) => sum + slice.width, 0);
  return placeDots(count).flatMap(({ x, y }) => {
    let rest = (1 - y) * total;
    const slice = free.find(({ width }) => (rest -= width) <= 0) ?? free.at(-1);
    return slice === undefined ? [] : [{ x: slice.left + x * slice.width, y: slice.y }];
  });
}

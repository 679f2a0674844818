// What stands on a chart's canvas. Band, bars and points differ by hatch and shape first, by colour last.
import uPlot from "uplot";
import type { Drawn, Mark } from "./drawn";

export interface Ink {
  readonly ink: string;
  readonly soft: string;
  readonly line: string;
  /** The same, half seen through. */
  readonly faint: string;
  readonly card: string;
  readonly brass: string;
  readonly weak: string;
  readonly strong: string;
  /** A font so many pixels of the page high. */
  readonly font: (weight: number, high: number) => string;
  /** One rem in pixels of the page. */
  readonly rem: number;
}

export function inkOf(host: HTMLElement): Ink {
  const style = getComputedStyle(host);
  const token = (name: string): string => style.getPropertyValue(`--${name}`).trim();
  const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
  return {
    ink: token("ink"),
    soft: token("ink-2"),
    line: token("line"),
    faint: `${token("line")}80`,
    card: token("card"),
    brass: token("brass"),
    weak: token("weak"),
    strong: token("strong"),
    font: (weight, high) => `${String(weight)} ${String(high)}px ${style.fontFamily}`,
    rem,
  };
}

type Context = CanvasRenderingContext2D;

/** Lines at 45° inside a box, as the hatches of the other drawings. */
function hatch(ctx: Context, box: readonly [number, number, number, number], step: number): void {
  const [x, y, w, h] = box;
  ctx.save();
  ctx.beginPath();
  ctx.rect(x, y, w, h);
  ctx.clip();
  ctx.beginPath();
  for (let at = x - h; at < x + w; at += step) {
    ctx.moveTo(at, y + h);
    ctx.lineTo(at + h, y);
  }
  ctx.stroke();
  ctx.restore();
}

const SHAPES: Readonly<Record<string, readonly (readonly [number, number])[]>> = {
  weak: [
    [-1, -0.8],
    [1, -0.8],
    [0, 1],
  ],
  strong: [
    [-1, 0.8],
    [1, 0.8],
    [0, -1],
  ],
  in_range: [
    [0, -1.1],
    [1.1, 0],
    [0, 1.1],
    [-1.1, 0],
  ],
};

function point(ctx: Context, ink: Ink, mark: Mark, x: number, y: number, size: number): void {
  const shape = SHAPES[mark.state ?? ""];
  ctx.beginPath();
  if (shape === undefined) ctx.arc(x, y, size * 0.8, 0, 2 * Math.PI);
  else for (const [dx, dy] of shape) ctx.lineTo(x + dx * size, y + dy * size);
  ctx.closePath();
  ctx.fillStyle = mark.state === "weak" ? ink.weak : mark.state === "strong" ? ink.strong : ink.ink;
  // A line of the ground around each: shapes that touch stay apart.
  ctx.strokeStyle = ink.card;
  ctx.lineWidth = size * 0.4;
  ctx.stroke();
  ctx.fill();
}

/** Draws in the chart's own pixels. */
export class Painter {
  readonly #plot: uPlot;
  readonly #ink: Ink;
  readonly #drawn: Drawn;

  constructor(plot: uPlot, ink: Ink, drawn: Drawn) {
    this.#plot = plot;
    this.#ink = ink;
    this.#drawn = drawn;
  }

  #x(at_s: number): number {
    return this.#plot.valToPos(at_s, "x", true);
  }

  #y(value: number): number {
    return this.#plot.valToPos(value, "y", true);
  }

  #px(css: number): number {
    return css * uPlot.pxRatio;
  }

  #inside(paint: () => void): void {
    const { ctx, bbox } = this.#plot;
    ctx.save();
    // The axes leave their dashes behind.
    ctx.setLineDash([]);
    ctx.beginPath();
    ctx.rect(bbox.left, bbox.top, bbox.width, bbox.height);
    ctx.clip();
    paint();
    ctx.restore();
  }

  ground(): void {
    const { ctx, bbox } = this.#plot;
    const { bands, rests } = this.#drawn;
    this.#inside(() => {
      ctx.lineWidth = this.#px(1);
      ctx.strokeStyle = this.#ink.line;
      for (const { from_s, to_s } of rests) {
        const x = this.#x(from_s);
        ctx.setLineDash([this.#px(2), this.#px(5)]);
        for (let at = x; at <= this.#x(to_s); at += this.#px(5)) {
          ctx.beginPath();
          ctx.moveTo(at, bbox.top);
          ctx.lineTo(at, bbox.top + bbox.height);
          ctx.stroke();
        }
        ctx.setLineDash([]);
      }
      for (const { from_s, to_s, low, high } of bands) {
        const box = [
          this.#x(from_s),
          this.#y(high),
          this.#x(to_s) - this.#x(from_s),
          this.#y(low) - this.#y(high),
        ] as const;
        ctx.lineWidth = this.#px(1);
        hatch(ctx, box, this.#px(8));
        ctx.lineWidth = this.#px(2);
        for (const edge of [box[1], box[1] + box[3]]) {
          ctx.beginPath();
          ctx.moveTo(box[0], edge);
          ctx.lineTo(box[0] + box[2], edge);
          ctx.stroke();
        }
      }
    });
  }

  #full(): void {
    const { ctx, bbox } = this.#plot;
    const { full } = this.#drawn;
    if (full === null) return;
    ctx.strokeStyle = this.#ink.ink;
    ctx.lineWidth = this.#px(2);
    ctx.setLineDash([this.#px(10), this.#px(5)]);
    ctx.beginPath();
    ctx.moveTo(bbox.left, this.#y(full));
    ctx.lineTo(bbox.left + bbox.width, this.#y(full));
    ctx.stroke();
    ctx.setLineDash([]);
  }

  #line(): void {
    const { ctx } = this.#plot;
    const { marks, breaks_s } = this.#drawn;
    ctx.strokeStyle = this.#ink.ink;
    ctx.lineWidth = this.#px(2);
    ctx.beginPath();
    marks.forEach((mark, i) => {
      const before = marks[i - 1];
      const isNew =
        before === undefined || breaks_s.some((at) => before.at_s < at && at <= mark.at_s);
      if (isNew) ctx.moveTo(this.#x(mark.at_s), this.#y(mark.value));
      else ctx.lineTo(this.#x(mark.at_s), this.#y(mark.value));
    });
    ctx.stroke();
  }

  #bars(): void {
    const { ctx } = this.#plot;
    const { bars } = this.#drawn;
    const wide = this.#px(Math.max(4, Math.min(10, 160 / Math.max(1, bars.length))));
    for (const { at_s, water, concentrate } of bars) {
      const x = this.#x(at_s) - wide / 2;
      const [foot, joint, top] = [0, concentrate, concentrate + water].map((v) => this.#y(v));
      if (foot === undefined || joint === undefined || top === undefined) continue;
      ctx.fillStyle = this.#ink.card;
      ctx.fillRect(x, top, wide, foot - top);
      ctx.strokeStyle = this.#ink.ink;
      ctx.lineWidth = this.#px(1.5);
      ctx.strokeRect(x, top, wide, foot - top);
      ctx.fillStyle = this.#ink.ink;
      ctx.fillRect(x, joint, wide, foot - joint);
    }
  }

  /** Figures in the margin at the right: the last value large, the band's edges where there is room. */
  #margin(): void {
    const { ctx, bbox } = this.#plot;
    const { marks, bands, last } = this.#drawn;
    const { rem, font, ink, soft } = this.#ink;
    const x = bbox.left + bbox.width + this.#px(6);
    const at = marks.at(-1)?.value;
    const taken = at === undefined || last === "" ? null : this.#y(at);
    ctx.textAlign = "left";
    ctx.textBaseline = "middle";
    ctx.font = font(400, this.#px(0.875 * rem));
    ctx.fillStyle = soft;
    const band = bands.at(-1);
    for (const edge of band === undefined ? [] : [band.low, band.high]) {
      const isFree = taken === null || Math.abs(this.#y(edge) - taken) > this.#px(1.1 * rem);
      if (isFree) ctx.fillText(this.#drawn.number(edge), x, this.#y(edge));
    }
    if (taken === null) return;
    ctx.font = font(700, this.#px(rem));
    ctx.fillStyle = ink;
    ctx.fillText(last, x, taken);
  }

  figure(): void {
    const { marks } = this.#drawn;
    const size = this.#px(marks.length > 80 ? 3 : marks.length > 40 ? 4.5 : 6);
    this.#inside(() => {
      this.#full();
      this.#bars();
      if (marks.length > 2) this.#line();
      for (const mark of marks)
        point(this.#plot.ctx, this.#ink, mark, this.#x(mark.at_s), this.#y(mark.value), size);
    });
    this.#margin();
  }
}

// One small chart: uPlot keeps the scales and the axes, the shapes on its canvas are ours.
import uPlot from "uplot";
import "uplot/dist/uPlot.min.css";
import type { Drawn } from "./drawn";
import { inkOf, Painter, type Ink } from "./painter";

/** Highest and lowest of what is shown, with room for shapes and the last figures. */
function rangeOf({ marks, bars, bands, full }: Drawn): readonly [number, number] {
  if (bars.length > 0) return [0, Math.max(...bars.map((b) => b.water + b.concentrate)) * 1.1];
  const values = [
    ...marks.map(({ value }) => value),
    ...bands.flatMap(({ low, high }) => [low, high]),
    ...(full === null ? [] : [full]),
  ];
  if (values.length === 0) return [0, 1];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = Math.max(high - low, Math.abs(high) * 0.02, 0.1);
  return [Math.max(0, low - 0.15 * room), high + 0.3 * room];
}

function axesOf(ink: Ink, drawn: Drawn): uPlot.Axis[] {
  const axis = {
    stroke: ink.ink,
    font: ink.font(400, 0.875 * ink.rem),
    ticks: { stroke: ink.line, width: 1, size: 4 },
  };
  const { day, number } = drawn;
  // A day that is longer than the room between two lines is named once.
  const once = (text: string, i: number, all: readonly string[]): string =>
    text === all[i - 1] ? "" : text;
  const days = (_: uPlot, all: number[]): string[] => all.map(day).map(once);
  return [
    {
      ...axis,
      grid: { stroke: ink.line, width: 1, dash: [2, 6] },
      space: 4 * ink.rem,
      size: 1.75 * ink.rem,
      values: days,
    },
    {
      ...axis,
      // Without gaps, since the band's hatch would hide dots, and fainter than all that is read.
      grid: { stroke: ink.faint, width: 1 },
      space: 2.25 * ink.rem,
      size: 3 * ink.rem,
      values: (_, all) => all.map(number),
    },
  ];
}

export function makePlot(host: HTMLElement, drawn: Drawn): uPlot {
  const ink = inkOf(host);
  const [low, high] = rangeOf(drawn);
  const side = 0.02 * (drawn.to_s - drawn.from_s);
  const painter = (plot: uPlot): Painter => new Painter(plot, ink, drawn);
  const options: uPlot.Options = {
    width: host.clientWidth,
    height: drawn.height,
    legend: { show: false },
    cursor: { show: false },
    padding: [8, Math.max(1.5 * ink.rem, 0.62 * ink.rem * drawn.margin + 14), 0, 0],
    scales: {
      x: { time: true, range: [drawn.from_s - side, drawn.to_s + side] },
      y: { range: [low, high] },
    },
    axes: axesOf(ink, drawn),
    series: [{}, { show: false }],
    hooks: {
      drawAxes: [
        (plot) => {
          painter(plot).ground();
        },
      ],
      draw: [
        (plot) => {
          painter(plot).figure();
        },
      ],
    },
  };
  const times = [drawn.from_s, drawn.to_s];
  return new uPlot(options, [times, times.map(() => null)], host);
}

// A pour test as it grows: a level line for each step in the tank, and beside it, at the same height,
// the step on the curve of litres.
import type { CalibrateSumpResult } from "../../core/messages";
import { spanAt, wallPath, yAt, type Frame } from "./outline";

const FRAME: Frame = { left: 15, right: 137, top: 16, floor: 153, width: 336, height: 168 };
const CURVE = { left: 170, right: 322 };

interface StairsProps {
  readonly result: CalibrateSumpResult;
  readonly name: string;
}

export function Stairs({ result, name }: StairsProps) {
  const { drawing, rows, steps } = result;
  const top = rows.at(-1);
  if (top === undefined) return null;
  const y = (depth_mm: number): number => yAt(FRAME, depth_mm / top.depth_mm);
  const x = (volume_l: number): number =>
    CURVE.left + (volume_l / top.volume_l.value) * (CURVE.right - CURVE.left);
  const curve = rows.map((row) => `L${x(row.volume_l.value)} ${y(row.depth_mm)}`).join("");
  const path = wallPath(FRAME, drawing);
  return (
    <svg
      class="drawing section stairs"
      viewBox={`0 0 ${FRAME.width} ${FRAME.height}`}
      role="img"
      aria-label={name}
    >
      <path d={path} class="wall-edge" stroke-width="22" />
      <path d={path} class="wall-body" stroke-width="18" />
      <path d={path} class="wall-cut" stroke="url(#cut)" stroke-width="18" />
      <path d={`${path}Z`} class="inside" />
      <path d={path} class="scribed" />
      <path d={`M${CURVE.left} ${FRAME.top}V${FRAME.floor}H${CURVE.right}`} class="axis" />
      <path d={`M${CURVE.left} ${FRAME.floor}${curve}`} class="stair-curve" />
      {steps.map(({ depth_mm, volume_l }) => {
        const { left, right } = spanAt(FRAME, drawing, depth_mm / top.depth_mm);
        const at = { x: x(volume_l), y: y(depth_mm) };
        return (
          <g key={depth_mm}>
            <path d={`M${left} ${at.y}H${right}`} class="surface" />
            <path d={`M${right + 12} ${at.y}H${at.x}`} class="stair-line" />
            <circle cx={at.x} cy={at.y} r="5" class="dot" />
          </g>
        );
      })}
    </svg>
  );
}

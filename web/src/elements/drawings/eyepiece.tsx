// The round field seen through the instrument: dark above, light below, the line between them is read.
import { write } from "../../words/numbers";

export type LineKind = "none" | "digital" | "optical" | "optical_oily" | "blurred";

const SIZE = 104;
const MIDDLE = SIZE / 2;
const RADIUS = 49;
const LOW_Y = 90;
const HIGH_Y = 18;
/** Scales that instruments have; the first that holds the reading is drawn. */
const SCALES = [15, 30, 60, 100] as const;
const STEPS = 3;

function yAt(value: number, most: number): number {
  return LOW_Y - (value / most) * (LOW_Y - HIGH_Y);
}

function Scale({ most }: { readonly most: number }) {
  const marks = Array.from({ length: STEPS * 5 + 1 }, (_, i) => (i * most) / (STEPS * 5));
  return (
    <>
      {marks.map((value, i) => (
        <path
          key={value}
          d={`M${String(MIDDLE - (i % 5 === 0 ? 9 : 5))} ${String(yAt(value, most))}h${i % 5 === 0 ? "18" : "10"}`}
          class="eye-tick"
        />
      ))}
      {marks
        .filter((_, i) => i % 5 === 0)
        .map((value) => (
          <text key={value} x={MIDDLE + 13} y={yAt(value, most) + 4.5} class="eye-number">
            {write({ value, decimals: 0, unit: "1" })}
          </text>
        ))}
    </>
  );
}

/** The line itself: sharp, ragged with oil, or a wide grey band. */
function lineParts(kind: LineKind, y: number) {
  if (kind === "blurred")
    return <rect x="0" y={y - 12} width={SIZE} height="24" class="eye-blur" />;
  if (kind === "optical_oily") {
    return <path d={`M0 ${String(y)}q9 -8 18 0t18 0t18 0t18 0t18 0t18 0`} class="eye-line" />;
  }
  return <path d={`M0 ${String(y)}H${String(SIZE)}`} class="eye-line" />;
}

interface EyepieceProps {
  readonly name: string;
  /** Brix as pycore read it; null while there is none. */
  readonly value: number | null;
  readonly kind?: LineKind;
  readonly scale?: boolean;
}

export function Eyepiece({ name, value, kind = "none", scale = true }: EyepieceProps) {
  const most = SCALES.find((top) => (value ?? 0) <= top) ?? SCALES[SCALES.length - 1] ?? 15;
  const y = value === null ? null : yAt(value, most);
  return (
    <svg
      class="drawing eyepiece"
      viewBox={`0 0 ${String(SIZE)} ${String(SIZE)}`}
      role={name === "" ? "presentation" : "img"}
      {...(name === "" ? {} : { "aria-label": name })}
    >
      <clipPath id="eye-field">
        <circle cx={MIDDLE} cy={MIDDLE} r={RADIUS} />
      </clipPath>
      <g clip-path="url(#eye-field)">
        <rect width={SIZE} height={SIZE} class="eye-dark" />
        {y === null ? null : <rect y={y} width={SIZE} height={SIZE} class="eye-light" />}
        {scale ? <Scale most={most} /> : null}
        {y === null ? null : lineParts(kind, y)}
      </g>
      <circle cx={MIDDLE} cy={MIDDLE} r={RADIUS} class="eye-rim" />
    </svg>
  );
}

/** The window of a digital instrument, for the choice of instruments. */
export function DigitalWindow() {
  return (
    <svg class="drawing" viewBox={`0 0 ${String(SIZE)} ${String(SIZE)}`} role="presentation">
      <rect x="8" y="22" width="88" height="60" rx="4" class="eye-window" />
      <text x={MIDDLE} y="64" class="eye-digits">
        {write({ value: 5.2, decimals: 1, unit: "1" })}
      </text>
    </svg>
  );
}

// State by shape and place first, word always, colour last: weak hangs under the band, strong stands over it.
import { stateWord, type State } from "../words/codes";

const MARKS: Readonly<Record<State, readonly string[]>> = {
  weak: ["M3 5h22", "M5 9h18l-9 15z"],
  strong: ["M3 23h22", "M14 4l9 15H5z"],
  in_range: ["M3 6h22M3 22h22", "M14 4l10 10-10 10L4 14z"],
  none: [],
  // A bucket in the ring of what nobody has read.
  poured: ["", "M9 9.5h10l-2 9h-6z"],
  stop: ["", "M9 2h10l7 7v10l-7 7H9l-7-7V9z"],
};

export function StateShape({
  state,
  size = 28,
}: {
  readonly state: State;
  readonly size?: number;
}) {
  const [band, shape] = MARKS[state];
  return (
    <svg
      class={`state-shape state-${state}`}
      viewBox="0 0 28 28"
      width={size}
      height={size}
      aria-hidden="true"
    >
      {state === "none" || state === "poured" ? (
        <circle cx="14" cy="14" r="10" class="state-ring" />
      ) : null}
      {band === undefined || band === "" ? null : <path d={band} class="state-band" />}
      {shape === undefined ? null : <path d={shape} class="state-fill" />}
      {state === "stop" ? <path d="M7 21L21 7M4 16L16 4M12 24L24 12" class="state-hatch" /> : null}
    </svg>
  );
}

export function StateMark({ state }: { readonly state: State }) {
  return (
    <span class={`state state-${state}`}>
      <StateShape state={state} />
      <span class="state-word">{stateWord(state)}</span>
    </span>
  );
}

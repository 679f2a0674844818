// Several answers at once: each row is a target of its own and shows by a tick that it is chosen.
interface TicksProps<T extends string> {
  readonly labelledBy: string;
  readonly options: readonly { readonly value: T; readonly word: string }[];
  readonly chosen: readonly T[];
  readonly onChange: (chosen: readonly T[]) => void;
}

export function Ticks<T extends string>({ labelledBy, options, chosen, onChange }: TicksProps<T>) {
  const toggle = (value: T): void => {
    const isIn = chosen.includes(value);
    onChange(isIn ? chosen.filter((other) => other !== value) : [...chosen, value]);
  };
  return (
    <div class="choice ticks" role="group" aria-labelledby={labelledBy}>
      {options.map(({ value, word }) => (
        <label
          key={value}
          class={chosen.includes(value) ? "choice-row choice-chosen" : "choice-row"}
        >
          <span class="tick-box">
            <input
              type="checkbox"
              checked={chosen.includes(value)}
              onChange={() => {
                toggle(value);
              }}
            />
            <svg viewBox="0 0 28 28" aria-hidden="true">
              <path d="M7 14.500l5 5 9 -11" />
            </svg>
          </span>
          <span class="choice-word">{word}</span>
        </label>
      ))}
    </div>
  );
}

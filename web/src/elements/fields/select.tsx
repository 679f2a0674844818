import type { ComponentChildren } from "preact";

interface SelectProps<T extends string> {
  readonly id: string;
  readonly label: string;
  readonly drawing?: ComponentChildren;
  readonly value: T;
  readonly options: readonly { readonly value: T; readonly word: string }[];
  readonly onChoose: (value: T) => void;
}

/** The phone's own list: it opens large, and is known to every screen reader. */
export function Select<T extends string>({
  id,
  label,
  drawing,
  value,
  options,
  onChoose,
}: SelectProps<T>) {
  return (
    <div class={drawing === undefined ? "select-row select-plain" : "select-row"}>
      {drawing === undefined ? null : <span class="choice-drawing">{drawing}</span>}
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value}
        onChange={(event) => {
          const found = options.find((option) => option.value === event.currentTarget.value);
          if (found !== undefined) onChoose(found.value);
        }}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.word}
          </option>
        ))}
      </select>
    </div>
  );
}

// One number in a row of several: its name is spoken, since the head of the column is far away.
interface CellProps {
  readonly label: string;
  readonly text: string;
  readonly faulty: boolean;
  readonly onText: (text: string) => void;
}

export function Cell({ label, text, faulty, onText }: CellProps) {
  return (
    <input
      class="text-box text-number"
      type="text"
      inputMode="decimal"
      autoComplete="off"
      value={text}
      aria-label={label}
      aria-invalid={faulty}
      onInput={(event) => {
        onText(event.currentTarget.value);
      }}
    />
  );
}

// The field a measurement is typed into. A real text field, so that a keyboard, pasting and a screen
// reader work.
import { charsOf } from "./chars";
import { inputModeOf } from "./keys";
import { unitSign, unitSpoken } from "../../words/numbers";

interface NumberFieldProps {
  readonly labelledBy: string;
  readonly describedBy?: string;
  readonly text: string;
  readonly unit: string;
  readonly faulty: boolean;
  readonly onText: (text: string) => void;
  readonly onEnter: () => void;
}

export function NumberField({
  labelledBy,
  describedBy,
  text,
  unit,
  faulty,
  onText,
  onEnter,
}: NumberFieldProps) {
  const id = `${labelledBy}-unit`;
  return (
    <div class="number-field">
      <span class="number-room" style={charsOf(text)}>
        <input
          class="number-box"
          type="text"
          inputMode={inputModeOf()}
          autoComplete="off"
          spellcheck={false}
          value={text}
          aria-labelledby={`${labelledBy} ${id}`}
          aria-invalid={faulty}
          {...(describedBy === undefined ? {} : { "aria-describedby": describedBy })}
          onInput={(event) => {
            onText(event.currentTarget.value);
          }}
          onKeyDown={(event) => {
            if (event.key === "Enter") onEnter();
          }}
        />
      </span>
      <span class="number-unit" aria-hidden="true">
        {unitSign(unit)}
      </span>
      <span id={id} class="only-spoken">
        {unitSpoken(unit)}
      </span>
    </div>
  );
}

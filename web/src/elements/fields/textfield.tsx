// A field of the set-up: name, unit and hint belong to it, what was typed stays.
import { unitSign, unitSpoken } from "../../words/numbers";
import { Fault } from "../fault";
import { inputModeOf } from "./keys";

interface TextFieldProps {
  readonly id: string;
  readonly label: string;
  readonly hint?: string;
  readonly unit?: string;
  readonly text: string;
  readonly fault?: string | undefined;
  readonly number?: boolean;
  readonly onText: (text: string) => void;
  /** The page has keys of its own for this field and is told when it is the one that is meant. */
  readonly onKeys?: (() => void) | undefined;
  /** The keys type into this one now. */
  readonly isMeant?: boolean;
}

export function TextField(props: TextFieldProps) {
  const { id, label, hint, unit, text, fault, number = true, onText, onKeys } = props;
  const meant = onKeys !== undefined && props.isMeant === true ? " text-meant" : "";
  const sign = unit === undefined ? "" : unitSign(unit);
  const described = [
    hint === undefined ? "" : `${id}-hint`,
    fault === undefined ? "" : `${id}-fault`,
  ]
    .filter(Boolean)
    .join(" ");
  return (
    <div class="text-field">
      <label for={id}>
        {label}
        {sign === "" ? null : <span class="only-spoken">{`, ${unitSpoken(unit ?? "")}`}</span>}
      </label>
      {hint === undefined ? null : (
        <p id={`${id}-hint`} class="note">
          {hint}
        </p>
      )}
      {fault === undefined ? null : <Fault id={`${id}-fault`}>{fault}</Fault>}
      <div class="text-row">
        <input
          id={id}
          type="text"
          class={(number ? "text-box text-number" : "text-box") + meant}
          autoComplete="off"
          value={text}
          inputMode={onKeys !== undefined ? inputModeOf() : number ? "decimal" : "text"}
          {...(onKeys === undefined ? {} : { onFocus: onKeys })}
          aria-invalid={fault !== undefined}
          {...(described === "" ? {} : { "aria-describedby": described })}
          onInput={(event) => {
            onText(event.currentTarget.value);
          }}
        />
        {sign === "" ? null : (
          <span class="text-unit" aria-hidden="true">
            {sign}
          </span>
        )}
      </div>
    </div>
  );
}

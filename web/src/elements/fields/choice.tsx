// A choice of a few: the whole row is the target and shows by a thick edge and a filled ring what is chosen.
import type { ComponentChildren } from "preact";

export interface Option<T extends string> {
  readonly value: T;
  readonly word: string;
  readonly note?: string;
  readonly drawing?: ComponentChildren;
}

interface ChoiceProps<T extends string> {
  readonly name: string;
  readonly labelledBy: string;
  readonly options: readonly Option<T>[];
  readonly chosen: T | "";
  readonly onChoose: (value: T) => void;
}

export function Choice<T extends string>({
  name,
  labelledBy,
  options,
  chosen,
  onChoose,
}: ChoiceProps<T>) {
  return (
    <div class="choice" role="radiogroup" aria-labelledby={labelledBy}>
      {options.map(({ value, word, note, drawing }) => (
        <label key={value} class={chosen === value ? "choice-row choice-chosen" : "choice-row"}>
          <input
            type="radio"
            name={name}
            value={value}
            checked={chosen === value}
            onChange={() => {
              onChoose(value);
            }}
          />
          {drawing === undefined ? null : <span class="choice-drawing">{drawing}</span>}
          <span class="choice-words">
            <span class="choice-word">{word}</span>
            {note === undefined ? null : <span class="note">{note}</span>}
          </span>
        </label>
      ))}
    </div>
  );
}

/** Each answer goes on at once: one tap, where a choice and a Continue would be two. */
export function Answers<T extends string>({
  options,
  last,
  onAnswer,
}: {
  readonly options: readonly Option<T>[];
  readonly last: { readonly value: string; readonly word: string };
  readonly onAnswer: (value: T) => void;
}) {
  return (
    <div class="answers">
      {options.map(({ value, word, note, drawing }) => (
        <button
          key={value}
          type="button"
          class="answer"
          onClick={() => {
            onAnswer(value);
          }}
        >
          {drawing === undefined ? null : <span class="choice-drawing">{drawing}</span>}
          <span class="choice-words">
            <span class="choice-word">{word}</span>
            {note === undefined ? null : <span class="note">{note}</span>}
            {last.value === value ? <span class="answer-last">{last.word}</span> : null}
          </span>
        </button>
      ))}
    </div>
  );
}

// One number of a card, taken from a short list by two large keys.
import { useState } from "preact/hooks";
import { Stepper } from "../../elements/fields/stepper";
import { say } from "../../words/say";

interface ChoicesProps {
  readonly label: string;
  readonly most: number;
  readonly at: number;
  readonly said: string;
  readonly onAt: (at: number) => void;
}

export function Choices({ label, most, at, said, onAt }: ChoicesProps) {
  return (
    <div class="learn-choice">
      <p class="learn-label" aria-hidden="true">
        {label}
      </p>
      <Stepper
        label={label}
        said={said}
        less={say("learn.less", { what: label })}
        more={say("learn.more_of_it", { what: label })}
        atLeast={at <= 0}
        atMost={at >= most}
        onStep={(by) => {
          onAt(at + by);
        }}
      />
    </div>
  );
}

/** The place in a list and what stands there. */
export function useOneOf<T>(list: readonly [T, ...T[]], first: number) {
  const [at, setAt] = useState(first);
  return { at, setAt, most: list.length - 1, value: list[at] ?? list[0] };
}

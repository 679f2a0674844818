// A number by two large buttons: no key to miss with a glove, nothing to misread.
import { charsOf } from "./chars";

interface StepperProps {
  readonly label: string;
  /** The number as a sentence: "2 buckets", "about 3 %". */
  readonly said: string;
  /** Whether the number itself is what is read from afar. */
  readonly large?: boolean;
  readonly less: string;
  readonly more: string;
  readonly atLeast?: boolean;
  readonly atMost?: boolean;
  readonly onStep: (by: 1 | -1) => void;
}

export function Stepper(props: StepperProps) {
  const { label, said, large = false, less, more, atLeast = false, atMost = false, onStep } = props;
  const step = (sign: string, word: string, by: 1 | -1, disabled: boolean) => (
    <button
      type="button"
      class="step-key"
      aria-label={word}
      disabled={disabled}
      onClick={() => {
        onStep(by);
      }}
    >
      {sign}
    </button>
  );
  return (
    <div class="stepper" role="group" aria-label={label}>
      {step("−", less, -1, atLeast)}
      <output class={large ? "step-said step-large" : "step-said"} style={charsOf(said)}>
        {said}
      </output>
      {step("+", more, 1, atMost)}
    </div>
  );
}

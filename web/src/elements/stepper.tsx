// A small whole number by two large buttons: no key to miss with a glove, nothing to misread.
interface StepperProps {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  /** The number as a sentence: "2 buckets", "about 3 %". */
  readonly said: string;
  readonly less: string;
  readonly more: string;
  readonly onValue: (value: number) => void;
}

export function Stepper({ label, value, least, most, said, less, more, onValue }: StepperProps) {
  const step = (sign: string, word: string, to: number) => (
    <button
      type="button"
      class="step-key"
      aria-label={word}
      disabled={to < least || to > most}
      onClick={() => {
        onValue(to);
      }}
    >
      {sign}
    </button>
  );
  return (
    <div class="stepper" role="group" aria-label={label}>
      {step("−", less, value - 1)}
      <output class="step-said">{said}</output>
      {step("+", more, value + 1)}
    </div>
  );
}

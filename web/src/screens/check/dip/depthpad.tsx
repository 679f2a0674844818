// The keys of a depth: digits, and for inches a second page of sixteenths.
import type { Unit } from "../../../core/messages";
import { joinInches, Sixteenths, splitInches } from "../../../elements/fields/inches";
import { Keypad } from "../../../elements/fields/keypad";

interface PadProps {
  readonly unit: Unit;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly onSoon?: (text: string) => void;
  /** Whether the sixteenths are tapped now. */
  readonly parts: boolean;
}

/** Millimetres are whole; inches come in two taps, first whole ones and then sixteenths. */
export function DepthPad({ unit, text, onText, onSoon, parts }: PadProps) {
  const inches = unit === "in" ? splitInches(text) : null;
  if (unit === "in" && parts) {
    const onPart = (part: string): void => {
      onText(joinInches({ whole: inches?.whole ?? "", part }));
    };
    return <Sixteenths chosen={inches === null ? null : inches.part || "0"} onPart={onPart} />;
  }
  const made = (typed: string): string =>
    inches === null || typed === "" ? typed : joinInches({ whole: typed, part: inches.part });
  return (
    <Keypad
      text={inches === null ? text : inches.whole}
      sign={unit === "mm" || unit === "in" ? "whole" : "decimal"}
      onText={(typed) => {
        onText(made(typed));
      }}
      onSoon={(typed) => {
        onSoon?.(made(typed));
      }}
    />
  );
}

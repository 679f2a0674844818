// The keys of the dip: digits, and for inches a second page of sixteenths.
import { joinInches, Sixteenths, splitInches } from "../../elements/inches";
import { Keypad } from "../../elements/keypad";
import type { CheckProps } from "./steps";

interface PadProps extends Pick<CheckProps, "machine" | "walk" | "change"> {
  readonly parts: boolean;
}

/** Millimetres are whole; inches come in two taps, first whole ones and then sixteenths. */
export function DipPad({ machine, walk, change, parts }: PadProps) {
  const unit = machine.body.machine.units.stick;
  const inches = unit === "in" ? splitInches(walk.dip) : null;
  if (unit === "in" && parts) {
    const onPart = (part: string): void => {
      change({ dip: joinInches({ whole: inches?.whole ?? "", part }) });
    };
    return <Sixteenths chosen={inches === null ? null : inches.part || "0"} onPart={onPart} />;
  }
  const text = inches === null ? walk.dip : inches.whole;
  const onText = (typed: string): void => {
    change({
      dip:
        inches === null || typed === "" ? typed : joinInches({ whole: typed, part: inches.part }),
    });
  };
  return (
    <Keypad
      text={text}
      sign={unit === "mm" || unit === "in" ? "whole" : "decimal"}
      onText={onText}
    />
  );
}

// Whole inches first, then sixteenths: Continue and Back lead through both.
import { useState } from "preact/hooks";
import { say } from "../../../words/say";

export function useInchParts(unit: string, text: string, onBack: () => void) {
  const [wantsParts, setParts] = useState(false);
  const isInch = unit === "in";
  const parts = isInch && wantsParts;
  const toParts = (): void => {
    setParts(true);
  };
  const toWhole = (): void => {
    setParts(false);
  };
  const isNext = isInch && !parts && text.trim() !== "";
  return {
    parts,
    onBack: parts ? toWhole : onBack,
    action: isNext ? { word: say("dip.to_parts"), onPress: toParts } : undefined,
  };
}

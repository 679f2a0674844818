// Inches by tapping: whole inches on the keypad, then one of sixteen parts, already reduced.
import { say } from "../../words/say";

const PARTS = [
  "0",
  "1/16",
  "1/8",
  "3/16",
  "1/4",
  "5/16",
  "3/8",
  "7/16",
  "1/2",
  "9/16",
  "5/8",
  "11/16",
  "3/4",
  "13/16",
  "7/8",
  "15/16",
] as const;

const MIXED = /^(\d*)(?:[ -]+)?(\d+\/\d+)?$/;

export interface Inches {
  readonly whole: string;
  readonly part: string;
}

/** Null where something else was typed by hand, such as 13.44: that stays as it is. */
export function splitInches(text: string): Inches | null {
  const trimmed = text.trim();
  if (/^\d+\/\d+$/.test(trimmed)) return { whole: "", part: trimmed };
  const found = MIXED.exec(trimmed);
  return found === null ? null : { whole: found[1] ?? "", part: found[2] ?? "" };
}

export function joinInches({ whole, part }: Inches): string {
  if (part === "" || part === "0") return whole === "" ? part : whole;
  return whole === "" ? part : `${whole} ${part}`;
}

export function Sixteenths({
  chosen,
  onPart,
}: {
  readonly chosen: string | null;
  readonly onPart: (part: string) => void;
}) {
  return (
    <div class="sixteenths" role="group" aria-label={say("keys.sixteenths")}>
      {PARTS.map((part) => (
        <button
          key={part}
          type="button"
          class="key"
          aria-pressed={chosen === part}
          onClick={() => {
            onPart(part);
          }}
        >
          {part}
        </button>
      ))}
    </div>
  );
}

// The keys of the row that is typed now: digits, parts of an inch, or the marks of a gauge.
import type { Unit } from "../../../core/messages";
import { Keypad } from "../../../elements/fields/keypad";
import { dipUnit, type Walk } from "../../../store/underway/walk";
import { say } from "../../../words/say";
import { DepthPad } from "../dip/depthpad";
import { GaugePad } from "../dip/gaugepad";
import type { CheckProps } from "../steps";
import type { Row } from "./rows";
import { useTyping } from "./soon";

interface KeysProps extends Pick<CheckProps, "machine" | "walk" | "change"> {
  readonly row: Row;
  readonly parts: boolean;
  readonly onParts: (parts: boolean) => void;
  readonly soon: (next: Walk) => void;
}

export function isDepth(row: Row): boolean {
  return row.row === "dip" || row.row === "clean_side";
}

export function Keys({ machine, walk, change, row, parts, onParts, soon }: KeysProps) {
  const { typed: onText, soon: onSoon } = useTyping(row, walk, change, soon);
  if (!isDepth(row)) return <Keypad text={row.text} sign="decimal" {...{ onText, onSoon }} />;
  if (row.row === "dip" && dipUnit(machine.body.machine) === "1")
    return <GaugePad walk={walk} change={change} />;
  const unit = row.unit as Unit;
  return (
    <div class="depth-keys">
      <DepthPad unit={unit} text={row.text} parts={parts} {...{ onText, onSoon }} />
      {unit === "in" ? (
        <button
          type="button"
          class="other-action"
          onClick={() => {
            onParts(!parts);
          }}
        >
          {say(parts ? "dip.to_whole" : "dip.to_parts")}
        </button>
      ) : null}
    </div>
  );
}

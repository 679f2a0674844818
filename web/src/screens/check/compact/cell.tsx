// A row of the one screen: its name, the number in a field of its own, and what the number comes to.
import type { ComponentChildren } from "preact";
import { NumberField } from "../../../elements/fields/numberfield";

export interface CellProps {
  readonly id: string;
  readonly name: string;
  readonly unit: string;
  readonly text: string;
  /** What it comes to, or the number of last time; never mistaken for what was typed. */
  readonly aside: ComponentChildren;
  /** The same as a picture. */
  readonly picture?: ComponentChildren;
  readonly isActive: boolean;
  readonly isFaulty: boolean;
  readonly onText: (text: string) => void;
  readonly onFocus: () => void;
  readonly onEnter: () => void;
}

/** Parts of an inch need smaller digits, and a share of a gauge two marks beside it. */
const KINDS: Readonly<Record<string, string>> = { in: " cell-inch", "1": " cell-wide" };

export const faultId = (id: string): string => `${id}-fault`;

export function Cell(cell: CellProps) {
  const { id, name, unit, text, aside, picture, isActive, isFaulty } = cell;
  const active = isActive ? " cell-active" : "";
  // Where no digits stand yet there is room for the number of last time below the name.
  const empty = text.trim() === "" ? " cell-empty" : "";
  return (
    <div class={`cell${active}${empty}${KINDS[unit] ?? ""}`} onFocusIn={cell.onFocus}>
      {picture}
      <div class="cell-inside">
        <p class="cell-top">
          <span id={id} class="cell-name">
            {name}
          </span>
          <span id={`${id}-aside`} class="cell-aside">
            {aside}
          </span>
        </p>
        <NumberField
          labelledBy={id}
          describedBy={isFaulty ? faultId(id) : `${id}-aside`}
          text={text}
          unit={unit}
          faulty={isFaulty}
          onText={cell.onText}
          onEnter={cell.onEnter}
        />
      </div>
    </div>
  );
}

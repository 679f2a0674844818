// A key types when the finger leaves it. While it is held the recipe is worked out already for what the key
// will make of the number; a finger that slides off has asked for nothing that is ever shown.
import { useRef } from "preact/hooks";
import type { Walk } from "../../../store/underway/walk";
import type { Row, RowName } from "./rows";

/** A press that takes longer is typed as if it had not been seen coming. */
const LONGEST_PRESS_MS = 2_000;

interface Coming {
  readonly row: RowName;
  readonly text: string;
  readonly change: Partial<Walk>;
  readonly at_ms: number;
}

export interface Typing {
  /** A key is held that will make `text` of the row. */
  readonly soon: (text: string) => void;
  readonly typed: (text: string) => void;
}

export function useTyping(
  { row, changed }: Row,
  walk: Walk,
  change: (change: Partial<Walk>) => void,
  ask: (next: Walk) => void,
): Typing {
  const coming = useRef<Coming | null>(null);
  return {
    soon: (text) => {
      coming.current = { row, text, change: changed(text), at_ms: performance.now() };
      ask({ ...walk, ...coming.current.change });
    },
    typed: (text) => {
      const { current } = coming;
      coming.current = null;
      // The change holds the moment of typing: made anew it would be another question.
      const isSame =
        current?.row === row &&
        current.text === text &&
        performance.now() - current.at_ms < LONGEST_PRESS_MS;
      change(isSame ? current.change : changed(text));
    },
  };
}

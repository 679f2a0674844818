// What a step of the clean-out asks for: numbers and words.
import type { Cleaning, CleanState } from "../../store/underway/cleaning";
import { isKey, say, type Key } from "../../words/say";

interface Asked {
  readonly name: string;
  readonly label: Key;
  readonly hint?: Key;
  /** Null for words. */
  readonly quantity: string | null;
  readonly unit: "plate" | "%" | null;
  readonly must?: true;
}

const litres = (name: string, label: Key): Asked => ({
  name,
  label,
  quantity: "volume_l",
  unit: "plate",
});
const words = (name: string, label: Key): Asked => ({ name, label, quantity: null, unit: null });
const OTHER: readonly Asked[] = [
  { ...litres("other_l", "clean.other_l"), must: true },
  { name: "other_pct", label: "clean.other_pct", quantity: "poured_pct", unit: "%", must: true },
];

const ASKED: Readonly<Partial<Record<CleanState, readonly Asked[]>>> = {
  cleaner_in: [words("cleaner", "clean.cleaner")],
  drained: [litres("waste", "clean.waste"), words("waste_note", "clean.waste_note")],
  rinsed: [litres("rinse", "clean.rinse")],
  left: [
    { ...litres("left", "clean.left"), must: true },
    {
      name: "left_strength",
      label: "clean.left_strength",
      hint: "clean.left_hint",
      quantity: "strength_pct",
      unit: "%",
      must: true,
    },
  ],
  charged: [words("lot", "clean.lot")],
};

export function askedAt(state: CleanState, { otherWay }: Cleaning): readonly Asked[] {
  const own = ASKED[state] ?? [];
  return state === "charged" && otherWay ? [...OTHER, ...own] : own;
}

/** The field as it stands inside an error's sentence. */
export function fieldWord(name: string): string {
  const key = `clean.field_${name}`;
  return isKey(key) ? say(key) : name;
}

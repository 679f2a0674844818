// What a step of the clean-out asks for. Numbers are read by pycore before the tick, texts never.
import { TextField } from "../../elements/textfield";
import { changeCleaning, type Cleaning, type CleanState } from "../../store/cleaning";
import type { MachineEntry } from "../../store/entry";
import { say, type Key } from "../../words/say";

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

export function StepFields({
  machine,
  state,
  cleaning,
  faults,
}: {
  readonly machine: MachineEntry;
  readonly state: CleanState;
  readonly cleaning: Cleaning;
  readonly faults: Readonly<Record<string, string>>;
}) {
  const { plate } = machine.body.machine.units;
  return (
    <>
      {askedAt(state, cleaning).map(({ name, label, hint, quantity, unit }) => (
        <TextField
          key={name}
          id={`clean-${name}`}
          label={say(label, { unit: plate })}
          {...(hint === undefined ? {} : { hint: say(hint) })}
          {...(unit === "plate" ? { unit: plate } : unit === "%" ? { unit } : {})}
          number={quantity !== null}
          text={cleaning.texts[name] ?? ""}
          fault={faults[name]}
          onText={(text) => {
            changeCleaning(machine.machine, { texts: { ...cleaning.texts, [name]: text } });
          }}
        />
      ))}
    </>
  );
}

// The fields of a step. Numbers are read by pycore before the tick, words never.
import { TextField } from "../../elements/fields/textfield";
import { changeCleaning, type Cleaning, type CleanState } from "../../store/underway/cleaning";
import type { MachineEntry } from "../../store/log/entry";
import { say } from "../../words/say";
import { askedAt } from "./asked";
import { faultFor, type Faults } from "./reading";

export function StepFields({
  machine,
  state,
  cleaning,
  faults,
}: {
  readonly machine: MachineEntry;
  readonly state: CleanState;
  readonly cleaning: Cleaning;
  readonly faults: Faults;
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
          fault={faultFor(faults, name, cleaning.texts[name] ?? "")}
          onText={(text) => {
            changeCleaning(machine.machine, { texts: { ...cleaning.texts, [name]: text } });
          }}
        />
      ))}
    </>
  );
}

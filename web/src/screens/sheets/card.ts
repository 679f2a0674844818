// What a machine card says beside the set-up: the whole circuit, and since when the tank is measured.
import { signal, type Signal } from "@preact/signals";
import type { DrawSheetBody, SumpTyped, Unit } from "../../core/messages";
import { readText, writeText } from "../../store/underway/drafts";
import type { MachineEntry } from "../../store/log/entry";
import { entries } from "../../store/log/journal";

const open = new Map<string, Signal<string>>();

/** Digits of another unit are another volume, so the unit belongs to the note's name. */
function noteOf(machine: string, unit: Unit): string {
  return `print.circuit.${machine}.${unit}`;
}

export function circuitOf(machine: string, unit: Unit): Signal<string> {
  const name = noteOf(machine, unit);
  const known = open.get(name);
  if (known !== undefined) return known;
  const text = signal(readText(name) ?? "");
  open.set(name, text);
  return text;
}

export function keepCircuit(machine: string, unit: Unit, text: string): void {
  circuitOf(machine, unit).value = text;
  writeText(noteOf(machine, unit), text);
}

function litresOf({ kind, full_depth, full_volume, points }: SumpTyped): string {
  return JSON.stringify([kind, full_depth, full_volume, points]);
}

/** The day on which these very litres were stored for the first time, if they were poured. */
export function pouredOn(machine: string): Pick<DrawSheetBody, "calibrated_on"> {
  const setups = entries.value
    .filter((entry): entry is MachineEntry => entry.kind === "machine")
    .filter((entry) => entry.machine === machine);
  const last = setups.at(-1)?.body.machine.sump;
  if (last?.volume_known_by !== "poured") return {};
  const isOther = ({ body }: MachineEntry): boolean =>
    litresOf(body.machine.sump) !== litresOf(last);
  const first = setups[setups.map(isOther).lastIndexOf(true) + 1];
  return first === undefined ? {} : { calibrated_on: first.measured_at.slice(0, 10) };
}

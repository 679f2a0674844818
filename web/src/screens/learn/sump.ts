// The invented sump of the cards: what a person would have typed for it.
import type {
  AssessSumpBody,
  ChangeTyped,
  MachineTyped,
  PlanCheckBody,
  Typed,
} from "../../core/messages";

export const litres = (text: string): Typed => ({ text, unit: "L" });

export const MACHINE: MachineTyped = {
  name: "wheel_lathe",
  sump: {
    kind: "proportional",
    full_depth: { text: "440", unit: "mm" },
    full_volume: litres("198"),
    volume_known_by: "poured",
  },
  fluid: { type: "semi_synthetic", factor: { text: "1.5", unit: "1" }, factor_known_by: "sheet" },
  target: {
    low: { text: "7", unit: "%" },
    aim: { text: "8", unit: "%" },
    high: { text: "9", unit: "%" },
  },
  mixing: {
    strong: { text: "20", unit: "%" },
    weak: { text: "1", unit: "%" },
    closeness: { text: "0.5", unit: "%" },
  },
  bucket: {
    usable: litres("12"),
    water_mark: { text: "0.5", unit: "L" },
    jug_mark: { text: "50", unit: "mL" },
  },
  units: { plate: "L", stick: "mm", pail: "L", jug: "L" },
};

/** The same sump with another dip or reading. */
export function checkAt(depth: string, shows: string): PlanCheckBody {
  return {
    machine: MACHINE,
    dip: { depth: { text: depth, unit: "mm" }, how: "hard_floor" },
    reading: { shows: { text: shows, unit: "Brix" }, how: "optical" },
  };
}

export function assessAt(depth: string, shows: string): AssessSumpBody {
  const { dip, reading } = checkAt(depth, shows);
  const { sump, fluid, target, units } = MACHINE;
  return { sump, fluid, target, units, dip, reading };
}

export function pour(water: string, concentrate: string, count = 1): ChangeTyped {
  return { kind: "pour", count, water: litres(water), concentrate: litres(concentrate) };
}

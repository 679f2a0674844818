// Where a check stands open, in the mode of this phone, and where the other mode takes it up.
import type { MachineEntry } from "../../store/log/entry";
import { isLooked } from "../../store/underway/looks";
import { mode } from "../../store/phone/mode";
import { isStarted, walkOf, type Walk } from "../../store/underway/walk";
import { kindOf, stepsOf, type CheckStep } from "./steps";

/** The address's word for the check on one screen. */
export const ALL = "all";

/** The page of the first measurement. */
export function measurePlace(machine: string): string {
  if (mode.value === "compact") return ALL;
  return walkOf(machine).value.order === "dip_first" ? "dip" : "reading";
}

/** Where a reading is typed. */
export function readingPlace(): string {
  return mode.value === "compact" ? ALL : "reading";
}

/** Look and smell come before anything is measured or added; the one screen has a row for them. */
export function firstPlace(machine: string): string {
  const isOn = isStarted(walkOf(machine).value) || isLooked(machine);
  return isOn || mode.value === "compact" ? measurePlace(machine) : "look";
}

const OPEN: Readonly<Partial<Record<CheckStep, (walk: Walk) => boolean>>> = {
  dip: ({ dip }) => dip.trim() === "",
  clean_side: ({ cleanSide }) => cleanSide.trim() === "",
  touched: ({ touched }) => touched === "",
  reading: ({ reading }) => reading.trim() === "",
  line: ({ line }) => line === "",
};

/** The first page that nobody has answered; with all of them answered, the one that lists them. */
export function guidedPlace({ machine, body }: MachineEntry): string {
  if (!isLooked(machine)) return "look";
  const walk = walkOf(machine).value;
  const steps = stepsOf(walk.order, kindOf(body.machine), body.machine);
  return steps.find((step) => OPEN[step]?.(walk) === true) ?? "answers";
}

// Which units a tool can have, and the usual pail and jug in each: a suggestion that can be typed over.
import type { Units } from "../../../core/messages";
import type { Form } from "../form";
import { jugsWithUnits } from "../jugs/jugs";
import { recordWithUnits } from "../fluid/record";
import { shopWithUnits } from "./shop";
import { tankWithUnits } from "../tank/tank";

export const PLATE_UNITS = ["L", "US gal", "imp gal"] as const;
export const STICK_UNITS = ["mm", "in", "cm"] as const;
export const PAIL_UNITS = ["L", "US gal", "US qt", "imp gal"] as const;
export const JUG_UNITS = ["mL", "L", "US fl oz", "US pt", "US qt", "imp fl oz", "imp pt"] as const;

/** Usable fill and mark spacing, in the pail's own unit. */
const PAILS: Readonly<Record<(typeof PAIL_UNITS)[number], readonly [string, string]>> = {
  L: ["10", "1"],
  "US gal": ["4", "1"],
  "US qt": ["16", "1"],
  "imp gal": ["2", "1/4"],
};

const JUGS: Readonly<Record<(typeof JUG_UNITS)[number], string>> = {
  mL: "50",
  L: "0.05",
  "US fl oz": "1",
  "US pt": "1/8",
  "US qt": "1/16",
  "imp fl oz": "1",
  "imp pt": "1/10",
};

/** Changing a unit clears what was typed in it: the same digits must never be read anew. */
export function withUnits(form: Form, units: Units): Form {
  const stick = units.stick !== form.units.stick;
  const plate = units.plate !== form.units.plate;
  const pail = PAILS[units.pail as keyof typeof PAILS];
  return {
    ...form,
    units,
    ...shopWithUnits(form, units),
    ...tankWithUnits(form, units),
    ...recordWithUnits(form, units),
    ...jugsWithUnits(form, units),
    ...(stick ? { fullDepth: "", length: "", width: "", rimDepth: "", neverAbove: "" } : {}),
    ...(plate ? { fullVolume: "" } : {}),
    ...(stick || plate
      ? {
          points: form.points.map((point) => ({
            depth: stick ? "" : point.depth,
            volume: plate ? "" : point.volume,
          })),
        }
      : {}),
    ...(units.pail === form.units.pail ? {} : { usable: pail[0], waterMark: pail[1] }),
    ...(units.jug === form.units.jug ? {} : { jugMark: JUGS[units.jug as keyof typeof JUGS] }),
  };
}

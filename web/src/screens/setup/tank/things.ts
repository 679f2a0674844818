// What stands in the coolant: pump body, pipe, filter basket. A row each while it is typed.
import type { ObstacleTyped, Typed, Unit } from "../../../core/messages";
import { given } from "../given";

export type Measured = "sides" | "round" | "volume";

export interface Thing {
  readonly from: string;
  readonly to: string;
  readonly by: Measured;
  readonly length: string;
  readonly width: string;
  readonly diameter: string;
  readonly volume: string;
}

export const EMPTY_THING: Thing = {
  from: "0",
  to: "",
  by: "sides",
  length: "",
  width: "",
  diameter: "",
  volume: "",
};

export const MOST_THINGS = 20;

/** The fields of a row that count: its area by two sides, a diameter, or what it displaces. */
export function areaParts({ by }: Thing): readonly ("length" | "width" | "diameter" | "volume")[] {
  if (by === "sides") return ["length", "width"];
  return by === "round" ? ["diameter"] : ["volume"];
}

/** A row without any measure is a row that nobody filled in. */
export function isEmptyThing(thing: Thing): boolean {
  return areaParts(thing).every((part) => thing[part].trim() === "") && thing.to.trim() === "";
}

export function thingOf(thing: Thing, stick: Unit, plate: Unit): ObstacleTyped {
  const depth = (text: string): Typed => ({ text, unit: stick });
  const area = {
    sides: { length: depth(thing.length), width: depth(thing.width) },
    round: { diameter: depth(thing.diameter) },
    volume: { volume: { text: thing.volume, unit: plate } },
  };
  return {
    from_depth: depth(thing.from),
    ...given("to_depth", thing.to, stick),
    ...area[thing.by],
  };
}

export function thingFormOf(typed: ObstacleTyped): Thing {
  const by =
    typed.volume !== undefined ? "volume" : typed.diameter !== undefined ? "round" : "sides";
  return {
    from: typed.from_depth.text,
    to: typed.to_depth?.text ?? "",
    by,
    length: typed.length?.text ?? "",
    width: typed.width?.text ?? "",
    diameter: typed.diameter?.text ?? "",
    volume: typed.volume?.text ?? "",
  };
}

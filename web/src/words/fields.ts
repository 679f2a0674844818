// Which field a path of pycore means: its name for people and the page where it is answered.
import { say, type Key } from "./say";
import { SUMP_FIELDS } from "./sumpfields";

export type SetupStep =
  | "name"
  | "units"
  | "litres"
  | "size"
  | "source"
  | "rim"
  | "fluid"
  | "drum"
  | "factor"
  | "factor_source"
  | "target"
  | "limits"
  | "bucket"
  | "things"
  | "hidden"
  | "dipping"
  | "pours"
  | "pouring"
  | "pail"
  | "allow"
  | "check";
export type WalkStep =
  | "dip"
  | "clean_side"
  | "touched"
  | "reading"
  | "line"
  | "target"
  | "answers"
  | "recipe"
  | "stock"
  | "fill"
  | "usual";

export interface Field {
  readonly name: string;
  readonly quantity?: string;
  readonly setup?: SetupStep;
  readonly walk?: WalkStep;
}

export interface Known {
  readonly key: Key;
  readonly quantity?: string;
  readonly setup?: SetupStep;
  readonly walk?: WalkStep;
}

const FIELDS: Readonly<Record<string, Known>> = {
  name: { key: "field.name", setup: "name" },
  units: { key: "field.units", setup: "units" },
  "sump.kind": { key: "field.kind", setup: "litres" },
  "sump.volume_known_by": { key: "field.known_by", setup: "source" },
  "sump.full_depth": { key: "field.full_depth", quantity: "full_depth_mm", setup: "size" },
  "sump.full_volume": { key: "field.full_volume", quantity: "full_volume_l", setup: "size" },
  "sump.length": { key: "field.length", quantity: "length_mm", setup: "size" },
  "sump.width": { key: "field.width", quantity: "length_mm", setup: "size" },
  "sump.points.depth": { key: "field.point_depth", quantity: "depth_mm", setup: "size" },
  "sump.points.volume": { key: "field.point_volume", quantity: "volume_l", setup: "size" },
  "sump.points": { key: "field.points", setup: "size" },
  "sump.rim_depth": { key: "field.rim_depth", quantity: "rim_depth_mm", setup: "rim" },
  "sump.never_above_depth": {
    key: "field.never_above",
    quantity: "never_above_mm",
    setup: "rim",
  },
  "sump.points.u": { key: "field.points", setup: "size" },
  ...SUMP_FIELDS,
  sump: { key: "field.sump", setup: "size" },
  "fluid.type": { key: "field.fluid_type", setup: "fluid" },
  "fluid.name": { key: "field.fluid_name", setup: "drum" },
  "fluid.factor": { key: "field.factor", quantity: "factor", setup: "factor" },
  "fluid.factor_known_by": { key: "field.factor_known_by", setup: "factor_source" },
  fluid: { key: "field.fluid_type", setup: "fluid" },
  "target.low": { key: "field.low", quantity: "low_pct", setup: "target" },
  "target.aim": { key: "field.aim", quantity: "aim_pct", setup: "target" },
  "target.high": { key: "field.high", quantity: "high_pct", setup: "target" },
  target: { key: "field.target", setup: "target" },
  "mixing.strong": { key: "field.strong", quantity: "strong_pct", setup: "limits" },
  "mixing.weak": { key: "field.weak", quantity: "weak_pct", setup: "limits" },
  "mixing.closeness": { key: "field.closeness", quantity: "closeness_pct", setup: "limits" },
  mixing: { key: "field.strong", setup: "limits" },
  "bucket.usable": { key: "field.usable", quantity: "usable_l", setup: "bucket" },
  "bucket.water_mark": { key: "field.water_mark", quantity: "water_mark_l", setup: "bucket" },
  "bucket.jug_mark": { key: "field.jug_mark", quantity: "jug_mark_l", setup: "bucket" },
  bucket: { key: "field.usable", setup: "bucket" },
  "pail.first_mark": { key: "field.first_mark", quantity: "first_mark_l", setup: "pail" },
  "pail.jug_first_mark": {
    key: "field.jug_first_mark",
    quantity: "jug_first_mark_l",
    setup: "pail",
  },
  "pail.jug_size": { key: "field.jug_size", quantity: "jug_max_l", setup: "pail" },
  pail: { key: "field.measure_by", setup: "pail" },
  "ways.carry_out": { key: "field.carry_out", quantity: "carry_out_l_d", setup: "allow" },
  "ways.most_buckets": { key: "field.most_buckets", quantity: "most_buckets", setup: "allow" },
  "ways.heaviest": { key: "field.heaviest", quantity: "heaviest_kg", setup: "allow" },
  "ways.unit.lowest": { key: "field.unit_lowest", quantity: "lowest_pct", setup: "allow" },
  "ways.unit.highest": { key: "field.unit_highest", quantity: "highest_pct", setup: "allow" },
  "ways.unit.step": { key: "field.unit_step", quantity: "step_pct", setup: "allow" },
  ways: { key: "field.ways", setup: "allow" },
  "dip.clean_side": { key: "field.clean_side", quantity: "depth_mm", walk: "clean_side" },
  "dip.depth": { key: "field.dip", quantity: "depth_mm", walk: "dip" },
  dip: { key: "field.dip", walk: "dip" },
  "reading.shows": { key: "field.reading", quantity: "reading_brix", walk: "reading" },
  reading: { key: "field.reading", walk: "reading" },
  aim: { key: "field.aim", quantity: "aim_pct", walk: "target" },
  fill_to_depth: { key: "field.fill", quantity: "full_depth_mm", walk: "fill" },
  concentrate_at_hand: { key: "field.stock", quantity: "concentrate_at_hand_l", walk: "stock" },
  usual: { key: "field.usual", quantity: "usual_pct", walk: "usual" },
};

function known(id: string): Field {
  const found = FIELDS[id];
  if (found === undefined) return { name: say("field.unknown") };
  const { key, ...rest } = found;
  return { ...rest, name: say(key) };
}

/** The longest known beginning of a path such as body.machine.sump.points[2].depth.text. */
export function fieldFromPath(path: string): Field {
  const row = /\[(\d+)\]/.exec(path)?.[1];
  const parts = path
    .replace(/^body\.?/, "")
    .replace(/^machine\.?/, "")
    .replace(/\[\d+\]/g, "")
    .split(".");
  for (let length = parts.length; length > 0; length -= 1) {
    const id = parts.slice(0, length).join(".");
    if (FIELDS[id] === undefined) continue;
    const field = known(id);
    if (row === undefined) return field;
    return {
      ...field,
      name: say("field.in_row", { field: field.name, row: String(Number(row) + 1) }),
    };
  }
  return known("");
}

export function fieldById(id: string): Field {
  return known(id);
}

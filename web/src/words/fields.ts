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
  | "instrument"
  | "zero"
  | "metals"
  | "sheet"
  | "batch"
  | "water"
  | "jugs"
  | "mixes"
  | "found"
  | "pour_here"
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
  | "usual"
  | "again"
  | "warmth"
  | "second";

export interface Field {
  readonly name: string;
  readonly quantity?: string;
  readonly setup?: SetupStep;
  readonly walk?: WalkStep;
}

export interface Known {
  readonly key: Key;
  /** How a row of it is called, where it is no row of a table. */
  readonly inRow?: Key;
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
  "fluid.factor_chart.strength": {
    key: "field.chart_strength",
    quantity: "chart_pct",
    setup: "factor",
  },
  "fluid.factor_chart.reading": {
    key: "field.chart_reading",
    quantity: "reading_brix",
    setup: "factor",
  },
  "fluid.factor_chart": { key: "field.chart", setup: "factor" },
  "fluid.factor_known_by": { key: "field.factor_known_by", setup: "factor_source" },
  "fluid.metals": { key: "field.metals", setup: "metals" },
  "fluid.made_for_magnesium": { key: "field.metals", setup: "metals" },
  "fluid.batch": { key: "field.batch", setup: "batch" },
  "fluid.delivered_on": { key: "field.delivered_on", setup: "batch" },
  "fluid.opened_on": { key: "field.opened_on", setup: "batch" },
  "fluid.shelf_life_months": { key: "field.shelf_life", setup: "batch" },
  "fluid.first_fill_ph": { key: "field.first_fill_ph", quantity: "first_fill_ph", setup: "sheet" },
  "fluid.density": { key: "field.density", quantity: "density_kg_l", setup: "sheet" },
  "fluid.titration_factor": {
    key: "field.titration_factor",
    quantity: "second_factor",
    setup: "sheet",
  },
  "fluid.split_factor": { key: "field.split_factor", quantity: "second_factor", setup: "sheet" },
  "fluid.water_limits.scheme": { key: "field.limits_scheme", setup: "sheet" },
  "fluid.water_limits.low": {
    key: "field.limits_low",
    quantity: "hardness_mg_l",
    setup: "sheet",
  },
  "fluid.water_limits.high": {
    key: "field.limits_high",
    quantity: "hardness_mg_l",
    setup: "sheet",
  },
  fluid: { key: "field.fluid_type", setup: "fluid" },
  "instrument.name": { key: "field.glass_name", setup: "instrument" },
  "instrument.factor_inside": {
    key: "field.factor_inside",
    quantity: "factor_inside",
    setup: "instrument",
  },
  "instrument.resolution": { key: "field.resolution", setup: "instrument" },
  "instrument.highest": { key: "field.highest", setup: "instrument" },
  "instrument.zero.shows": { key: "field.zero_shows", setup: "zero" },
  "instrument.zero.on": { key: "field.zero_on", setup: "zero" },
  "instrument.zero.temperature": {
    key: "field.zero_temperature",
    quantity: "temperature_c",
    setup: "zero",
  },
  "instrument.zero": { key: "field.zero_shows", setup: "zero" },
  instrument: { key: "field.instrument", setup: "instrument" },
  "water.hardness": { key: "field.hardness", quantity: "hardness_mg_l", setup: "water" },
  "water.chloride": { key: "field.chloride", quantity: "chloride_mg_l", setup: "water" },
  "water.nitrate": { key: "field.nitrate", quantity: "nitrate_mg_l", setup: "water" },
  water: { key: "field.water", setup: "water" },
  "jugs.water": {
    key: "field.jug_water",
    inRow: "field.of_jug",
    quantity: "jug_amount_l",
    setup: "mixes",
  },
  "jugs.concentrate": {
    key: "field.jug_concentrate",
    inRow: "field.of_jug",
    quantity: "jug_amount_l",
    setup: "mixes",
  },
  "jugs.shows": { key: "field.jug_shows", inRow: "field.of_jug", setup: "mixes" },
  jugs: { key: "field.jugs", setup: "mixes" },
  "target.low": { key: "field.low", quantity: "low_pct", setup: "target" },
  "target.aim": { key: "field.aim", quantity: "aim_pct", setup: "target" },
  "target.high": { key: "field.high", quantity: "high_pct", setup: "target" },
  pour_here: { key: "field.pour_here", setup: "pour_here" },
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
  "reading.again": { key: "field.reading", inRow: "field.again", walk: "again" },
  "reading.temperature": {
    key: "field.temperature",
    quantity: "temperature_c",
    walk: "warmth",
  },
  reading: { key: "field.reading", walk: "reading" },
  "second.shows": { key: "field.second_shows", quantity: "second_shows", walk: "second" },
  "second.factor": { key: "field.second_factor", quantity: "second_factor", walk: "second" },
  second: { key: "field.second", walk: "second" },
  aim: { key: "field.aim", quantity: "aim_pct", walk: "target" },
  fill_to_depth: { key: "field.fill", quantity: "full_depth_mm", walk: "fill" },
  concentrate_at_hand: { key: "field.stock", quantity: "concentrate_at_hand_l", walk: "stock" },
  measured_100_mm: { key: "field.measured_100_mm", quantity: "measured_100_mm" },
  "pail_shape.floor_diameter": { key: "field.floor_diameter" },
  "pail_shape.brim_diameter": { key: "field.brim_diameter" },
  "pail_shape.height": { key: "field.pail_height" },
  "pail_shape.fills.depth": { key: "field.fill_depth" },
  "pail_shape.fills.volume": { key: "field.fill_volume" },
  pail_shape: { key: "field.pail_shape" },
  usual: { key: "field.usual", quantity: "usual_pct", walk: "usual" },
};

function known(id: string): Field {
  const found = FIELDS[id];
  if (found === undefined) return { name: say("field.unknown") };
  const { key, quantity, setup, walk } = found;
  return {
    name: say(key),
    ...(quantity === undefined ? {} : { quantity }),
    ...(setup === undefined ? {} : { setup }),
    ...(walk === undefined ? {} : { walk }),
  };
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
      name: say(FIELDS[id].inRow ?? "field.in_row", {
        field: field.name,
        row: String(Number(row) + 1),
      }),
    };
  }
  return known("");
}

export function fieldById(id: string): Field {
  return known(id);
}

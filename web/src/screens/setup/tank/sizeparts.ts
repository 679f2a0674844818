// Which measures each kind of tank needs, and where pycore knows them.
import { say } from "../../../words/say";
import { isEmptyPoint, type Form } from "../form";
import type { Asked } from "../frame";
import type { NumberPart } from "../numberrow";

type Measure = Omit<NumberPart, "unit"> & { readonly tool: "stick" | "plate" };

const FULL: Measure = {
  part: "fullDepth",
  path: "sump.full_depth",
  label: say("size.full_depth"),
  tool: "stick",
};
const LENGTH: Measure = {
  part: "length",
  path: "sump.length",
  label: say("size.length"),
  tool: "stick",
};
const WIDTH: Measure = {
  part: "width",
  path: "sump.width",
  label: say("size.width"),
  tool: "stick",
};
const RISE: Measure = {
  part: "rise",
  path: "sump.rise",
  label: say("size.rise"),
  hint: say("size.rise_hint"),
  tool: "stick",
};
const DIAMETER: Measure = {
  part: "diameter",
  path: "sump.diameter",
  label: say("size.diameter"),
  tool: "stick",
};
const BOTTOM: Measure = {
  part: "bottomDiameter",
  path: "sump.bottom_diameter",
  label: say("size.bottom_diameter"),
  hint: say("size.bottom_diameter_hint"),
  tool: "stick",
};
const TOP: Measure = {
  part: "topDiameter",
  path: "sump.top_diameter",
  label: say("size.top_diameter"),
  tool: "stick",
};
const HEIGHT: Measure = {
  part: "height",
  path: "sump.height",
  label: say("size.height"),
  tool: "stick",
};
const VOLUME: Measure = {
  part: "fullVolume",
  path: "sump.full_volume",
  label: say("size.full_volume"),
  tool: "plate",
};

const MEASURES: Readonly<Record<Exclude<Form["kind"], "">, readonly Measure[]>> = {
  proportional: [FULL, VOLUME],
  box: [LENGTH, WIDTH, FULL],
  sloped_box: [LENGTH, WIDTH, RISE, FULL],
  stepped: [FULL],
  upright_cylinder: [DIAMETER, FULL],
  horizontal_cylinder: [DIAMETER, LENGTH, FULL],
  frustum: [BOTTOM, TOP, HEIGHT, FULL],
  table: [FULL],
};

export function sizeParts({ kind, units }: Form): readonly NumberPart[] {
  const measures = MEASURES[kind === "" ? "proportional" : kind];
  return measures.map(({ tool, ...measure }) => ({ ...measure, unit: units[tool] }));
}

export const BOX_PARTS = ["floor", "length", "width"] as const;

/** The numbers of the rows: boxes of a stepped tank, or pairs of a table. */
export function rowsAsked({ kind, units, boxes, points }: Form): readonly Asked[] {
  const { stick, plate } = units;
  if (kind === "stepped") {
    return boxes.flatMap((box, i) =>
      BOX_PARTS.map((part) => ({ path: `sump.steps[${i}].${part}`, text: box[part], unit: stick })),
    );
  }
  if (kind !== "table") return [];
  const filled = points.filter((point) => !isEmptyPoint(point));
  return filled.flatMap((point, i): Asked[] => [
    { path: `sump.points[${i}].depth`, text: point.depth, unit: stick },
    { path: `sump.points[${i}].volume`, text: point.volume, unit: plate },
  ]);
}

// The sump while it is typed: the measures of each kind of tank, and how its level is taken.
import type { CalibrateSumpBody, SumpTyped, Typed, Units } from "../../../core/messages";
import type { Form, Kind } from "../form";
import { given } from "../given";
import { isEmptyThing, thingFormOf, thingOf, type Thing } from "./things";

export interface Box {
  readonly floor: string;
  readonly length: string;
  readonly width: string;
}

export type DippedEnd = NonNullable<SumpTyped["dipped_end"]>;
export type DipFrom = NonNullable<SumpTyped["dip_from"]>;
export type ReadAs = NonNullable<SumpTyped["read_as"]>;
export type LevelTrue = NonNullable<SumpTyped["level_true"]>;
type YesNo = "yes" | "no";

export interface TankForm {
  readonly rise: string;
  readonly dippedEnd: DippedEnd | "";
  readonly boxes: readonly Box[];
  readonly diameter: string;
  readonly bottomDiameter: string;
  readonly topDiameter: string;
  readonly height: string;
  readonly things: readonly Thing[];
  readonly hiddenVolume: string;
  readonly hiddenU: string;
  readonly drainsBack: YesNo;
  readonly rest: string;
  readonly dipFrom: DipFrom;
  readonly referenceHeight: string;
  readonly zeroOffset: string;
  readonly readAs: ReadAs;
  readonly levelTrue: LevelTrue;
  /** Minutes as digits; empty where nobody gave them. */
  readonly wait: string;
  readonly mixTime: string;
  readonly divided: YesNo;
  /** What the table was found from since the set-up was last saved; it goes into the log with it. */
  readonly pourTest: CalibrateSumpBody | null;
}

export const EMPTY_BOX: Box = { floor: "", length: "", width: "" };

export const NEW_TANK: TankForm = {
  rise: "",
  dippedEnd: "",
  // The first floor is the one that the others are measured from.
  boxes: [{ ...EMPTY_BOX, floor: "0" }, EMPTY_BOX],
  diameter: "",
  bottomDiameter: "",
  topDiameter: "",
  height: "",
  things: [],
  hiddenVolume: "",
  hiddenU: "",
  drainsBack: "yes",
  rest: "",
  dipFrom: "bottom",
  referenceHeight: "",
  zeroOffset: "",
  readAs: "depth",
  levelTrue: "stopped",
  wait: "",
  mixTime: "",
  divided: "no",
  pourTest: null,
};

const yesNo = (value: boolean | undefined): YesNo => (value === true ? "yes" : "no");

export function tankFormOf(sump: SumpTyped): TankForm {
  const text = (typed: Typed | undefined): string => typed?.text ?? "";
  return {
    rise: text(sump.rise),
    dippedEnd: sump.dipped_end ?? "",
    boxes:
      sump.steps?.map(({ floor, length, width }) => ({
        floor: floor.text,
        length: length.text,
        width: width.text,
      })) ?? NEW_TANK.boxes,
    diameter: text(sump.diameter),
    bottomDiameter: text(sump.bottom_diameter),
    topDiameter: text(sump.top_diameter),
    height: text(sump.height),
    things: (sump.obstacles ?? []).map(thingFormOf),
    hiddenVolume: text(sump.hidden?.volume),
    hiddenU: text(sump.hidden?.u),
    drainsBack: yesNo(sump.hidden?.drains_back ?? true),
    rest: text(sump.rest),
    dipFrom: sump.dip_from ?? "bottom",
    referenceHeight: text(sump.reference_height),
    zeroOffset: text(sump.zero_offset),
    readAs: sump.read_as ?? "depth",
    levelTrue: sump.level_true ?? "stopped",
    wait: sump.wait_min === undefined ? "" : String(sump.wait_min),
    mixTime: sump.mix_min === undefined ? "" : String(sump.mix_min),
    divided: yesNo(sump.divided),
    pourTest: null,
  };
}

/** Things that stand in the liquid belong to tanks known by their measures. */
export function isMeasured(kind: Kind | ""): boolean {
  return kind !== "" && kind !== "proportional" && kind !== "table";
}

/** Digits of another unit would be another length or another volume. */
export function tankWithUnits(form: Form, units: Units): Partial<TankForm> {
  const stick = units.stick !== form.units.stick;
  const plate = units.plate !== form.units.plate;
  const { boxes, things } = NEW_TANK;
  const lengths = {
    rise: "",
    boxes,
    diameter: "",
    bottomDiameter: "",
    topDiameter: "",
    height: "",
    referenceHeight: "",
    zeroOffset: "",
  };
  return {
    ...(stick ? lengths : {}),
    ...(plate ? { hiddenVolume: "", hiddenU: "", rest: "" } : {}),
    ...(stick || plate ? { things } : {}),
  };
}

type Measures = Omit<SumpTyped, "kind" | "full_depth" | "volume_known_by">;

/** The measures of this kind and of no other: pycore refuses a field that belongs elsewhere. */
function measuresOf(form: Form, kind: Kind): Measures {
  const { stick, plate } = form.units;
  const depth = (text: string): Typed => ({ text, unit: stick });
  const sides = { length: depth(form.length), width: depth(form.width) };
  const end = form.dippedEnd === "" ? "deep" : form.dippedEnd;
  const points = form.points
    .filter((point) => point.depth.trim() !== "" || point.volume.trim() !== "")
    .map((point) => ({
      depth: depth(point.depth),
      volume: { text: point.volume, unit: plate },
      ...given("u", point.u ?? "", plate),
    }));
  const steps = form.boxes.map(({ floor, length, width }) => ({
    floor: depth(floor),
    length: depth(length),
    width: depth(width),
  }));
  const measures: Readonly<Record<Kind, Measures>> = {
    proportional: { full_volume: { text: form.fullVolume, unit: plate } },
    box: sides,
    sloped_box: { ...sides, rise: depth(form.rise), dipped_end: end },
    stepped: { steps },
    upright_cylinder: { diameter: depth(form.diameter) },
    horizontal_cylinder: { diameter: depth(form.diameter), length: depth(form.length) },
    frustum: {
      bottom_diameter: depth(form.bottomDiameter),
      top_diameter: depth(form.topDiameter),
      height: depth(form.height),
    },
    table: { points },
  };
  return measures[kind];
}

function dippingOf(form: Form): Measures {
  const { stick } = form.units;
  const height = { text: form.referenceHeight, unit: stick };
  const isTop = form.dipFrom === "top";
  const ofStick = {
    ...(isTop ? { dip_from: "top" as const, reference_height: height } : {}),
    ...given("zero_offset", form.zeroOffset, stick),
    ...(form.divided === "yes" ? { divided: true } : {}),
  };
  return {
    // What belongs to a stick would not be used beside a printed scale or a gauge.
    ...(form.readAs === "depth" ? ofStick : { read_as: form.readAs }),
    ...(form.levelTrue === "stopped" ? {} : { level_true: form.levelTrue }),
    // A choice of the page, not a typed number.
    ...(form.wait === "" ? {} : { wait_min: Number(form.wait) }),
    ...(form.mixTime === "" ? {} : { mix_min: Number(form.mixTime) }),
  };
}

function circuitOf(form: Form, kind: Kind): Measures {
  const { stick, plate } = form.units;
  const things = form.things.filter((thing) => !isEmptyThing(thing));
  const hidden = {
    volume: { text: form.hiddenVolume, unit: plate },
    ...given("u", form.hiddenU, plate),
    drains_back: form.drainsBack === "yes",
  };
  return {
    ...(things.length === 0 || !isMeasured(kind)
      ? {}
      : { obstacles: things.map((thing) => thingOf(thing, stick, plate)) }),
    ...(form.hiddenVolume.trim() === "" ? {} : { hidden }),
    ...given("rest", form.rest, plate),
  };
}

/** The kind and its measures alone, for the page that asks only them. */
export function shapeOf(form: Form): SumpTyped {
  const kind = form.kind === "" ? "proportional" : form.kind;
  return {
    kind,
    full_depth: { text: form.fullDepth, unit: form.units.stick },
    volume_known_by: form.knownBy === "" ? "said" : form.knownBy,
    ...measuresOf(form, kind),
  };
}

export function sumpOf(form: Form): SumpTyped {
  const shape = shapeOf(form);
  const { stick } = form.units;
  return {
    ...shape,
    // The last row of a table is its rim already.
    ...(shape.kind === "table" ? {} : given("rim_depth", form.rimDepth, stick)),
    ...given("never_above_depth", form.neverAbove, stick),
    ...circuitOf(form, shape.kind),
    ...dippingOf(form),
  };
}

/** The pour test, for as long as the table is the one that it gave: rows typed by hand have no u. */
export function pourTestPart({ kind, points, pourTest }: Form) {
  const filled = points.filter(({ depth, volume }) => depth.trim() + volume.trim() !== "");
  const isPoured = kind === "table" && filled.every(({ u }) => u !== undefined);
  return pourTest !== null && isPoured ? { pour_test: pourTest } : {};
}

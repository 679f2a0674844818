// A machine's set-up while it is typed: texts as they stand in the fields, and nothing read out of them.
import type { FluidTyped, MachineTyped, SumpTyped, Typed, Units } from "../../core/messages";
import { newId } from "../../store/log/ids";
import type { SetupStep } from "../../words/fields";
import { glassFormOf, instrumentOf, NEW_GLASS, type GlassForm } from "./fluid/glass";
import { NEW_JUGS, type JugsForm } from "./jugs/jugs";
import {
  factorOf,
  NEW_RECORD,
  recordFormOf,
  recordOf,
  waterOf,
  type RecordForm,
} from "./fluid/record";
import { NEW_SHOP, shopFormOf, shopOf, type ShopForm } from "./shop/shop";
import { NEW_TANK, sumpOf, tankFormOf, type TankForm } from "./tank/tank";

export type Kind = SumpTyped["kind"];
export type KnownBy = SumpTyped["volume_known_by"];
export type FluidType = FluidTyped["type"];
export type FactorBy = NonNullable<FluidTyped["factor_known_by"]>;

export interface Point {
  readonly depth: string;
  readonly volume: string;
  /** Standard uncertainty, where a pour test gave it. */
  readonly u?: string;
}

export interface Form extends ShopForm, TankForm, GlassForm, RecordForm, JugsForm {
  /** Of the machine; an edited machine keeps its own. */
  readonly machine: string;
  /** Of the entry that Save will write. */
  readonly entry: string;
  readonly name: string;
  readonly units: Units;
  readonly kind: Kind | "";
  readonly knownBy: KnownBy | "";
  readonly fullDepth: string;
  readonly fullVolume: string;
  readonly length: string;
  readonly width: string;
  readonly points: readonly Point[];
  readonly rimDepth: string;
  readonly neverAbove: string;
  readonly fluidName: string;
  readonly fluidType: FluidType | "";
  readonly hasFactor: "yes" | "no" | "";
  readonly factor: string;
  readonly factorBy: FactorBy | "";
  readonly low: string;
  readonly aim: string;
  readonly high: string;
  readonly strong: string;
  readonly weak: string;
  readonly closeness: string;
  readonly usable: string;
  readonly waterMark: string;
  readonly jugMark: string;
  /** Where buckets are poured in, in the shop's own words. */
  readonly pourHere: string;
  readonly kept: readonly string[];
}

const EMPTY_POINT: Point = { depth: "", volume: "" };

export function newForm(): Form {
  return {
    machine: newId(),
    entry: newId(),
    name: "",
    units: { plate: "L", stick: "mm", pail: "L", jug: "mL" },
    kind: "",
    knownBy: "",
    fullDepth: "",
    fullVolume: "",
    length: "",
    width: "",
    points: [EMPTY_POINT, EMPTY_POINT, EMPTY_POINT, EMPTY_POINT],
    rimDepth: "",
    neverAbove: "",
    fluidName: "",
    fluidType: "",
    hasFactor: "",
    factor: "",
    factorBy: "",
    low: "",
    aim: "",
    high: "",
    strong: "20",
    weak: "1",
    closeness: "0.5",
    usable: "10",
    waterMark: "1",
    jugMark: "50",
    pourHere: "",
    ...NEW_SHOP,
    ...NEW_TANK,
    ...NEW_GLASS,
    ...NEW_RECORD,
    ...NEW_JUGS,
    kept: [],
  };
}

export function pointOf({ depth, volume, u }: NonNullable<SumpTyped["points"]>[number]): Point {
  const row = { depth: depth.text, volume: volume.text };
  return u === undefined ? row : { ...row, u: u.text };
}

export function formOf(machine: string, typed: MachineTyped): Form {
  const { sump, fluid, target, mixing, bucket } = typed;
  return {
    machine,
    entry: newId(),
    name: typed.name,
    units: typed.units,
    kind: sump.kind,
    knownBy: sump.volume_known_by,
    fullDepth: sump.full_depth.text,
    fullVolume: sump.full_volume?.text ?? "",
    length: sump.length?.text ?? "",
    width: sump.width?.text ?? "",
    points: sump.points?.map(pointOf) ?? newForm().points,
    rimDepth: sump.rim_depth?.text ?? "",
    neverAbove: sump.never_above_depth?.text ?? "",
    fluidName: fluid.name ?? "",
    fluidType: fluid.type,
    hasFactor: (fluid.factor ?? fluid.factor_chart) === undefined ? "no" : "yes",
    factor: fluid.factor?.text ?? "",
    factorBy: fluid.factor_known_by ?? "",
    low: target.low.text,
    aim: target.aim.text,
    high: target.high.text,
    strong: mixing.strong.text,
    weak: mixing.weak.text,
    closeness: mixing.closeness.text,
    usable: bucket.usable.text,
    waterMark: bucket.water_mark.text,
    jugMark: bucket.jug_mark.text,
    pourHere: typed.pour_here ?? "",
    ...shopFormOf(typed),
    ...tankFormOf(sump),
    ...glassFormOf(typed),
    ...recordFormOf(typed),
    ...NEW_JUGS,
    kept: [],
  };
}

/** Came later than the first drafts: a draft without them still holds. */
const LATER = { pourHere: "", ...NEW_TANK, ...NEW_GLASS, ...NEW_RECORD, ...NEW_JUGS };

function isForm(value: object): value is Form {
  const draft = value as Readonly<Record<string, unknown>>;
  return Object.entries(newForm()).every(([name, part]) =>
    Array.isArray(part) ? Array.isArray(draft[name]) : typeof draft[name] === typeof part,
  );
}

/** A draft from this phone's own storage; null for one of another shape, which another build wrote. */
export function draftOf(value: unknown): Form | null {
  if (value === null || typeof value !== "object") return null;
  const draft = { ...LATER, ...value };
  if (!isForm(draft)) return null;
  // Before there was a way to choose, a factor was per cent for one Brix: that is multiplying.
  const isOld = draft.hasFactor === "yes" && draft.factorWay === "";
  return isOld && draft.factor.trim() !== "" ? { ...draft, factorWay: "multiply" } : draft;
}

export function isEmptyPoint(point: Point): boolean {
  return point.depth.trim() === "" && point.volume.trim() === "";
}

export function fluidOf(form: Form): FluidTyped {
  const name = form.fluidName.trim();
  const { zero, ...record } = recordOf(form, form.units.pail);
  // A zero stands with the fluid or with the instrument, never twice.
  const isLoose = zero !== undefined && form.glassShows === "none";
  return {
    type: form.fluidType === "" ? "soluble_oil" : form.fluidType,
    ...(name === "" ? {} : { name }),
    ...factorOf(form),
    ...record,
    ...(isLoose ? { zero } : {}),
  };
}

export function machineOf(form: Form): MachineTyped {
  const percent = (text: string): Typed => ({ text, unit: "%" });
  const pourHere = form.pourHere.trim();
  return {
    name: form.name.trim(),
    sump: sumpOf(form),
    fluid: fluidOf(form),
    target: { low: percent(form.low), aim: percent(form.aim), high: percent(form.high) },
    mixing: {
      strong: percent(form.strong),
      weak: percent(form.weak),
      closeness: percent(form.closeness),
    },
    bucket: {
      usable: { text: form.usable, unit: form.units.pail },
      water_mark: { text: form.waterMark, unit: form.units.pail },
      jug_mark: { text: form.jugMark, unit: form.units.jug },
    },
    units: form.units,
    ...shopOf(form),
    ...instrumentOf(form, form.units.pail),
    ...waterOf(form),
    ...(pourHere === "" ? {} : { pour_here: pourHere }),
  };
}

/**
 * The first choice that nobody has made yet. A machine with one is never sent as a whole: what stands
 * for it in `sumpOf` and `fluidOf` only lets single pages be looked at.
 */
export function openChoice(form: Form): SetupStep | null {
  if (form.kind === "") return "litres";
  if (form.kind === "sloped_box" && form.dippedEnd === "") return "size";
  if (form.knownBy === "") return "source";
  if (form.fluidType === "") return "fluid";
  if (form.hasFactor === "") return "factor";
  if (form.hasFactor === "yes" && form.factorWay === "") return "factor";
  return form.hasFactor === "yes" && form.factorBy === "" ? "factor_source" : null;
}

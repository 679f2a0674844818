// What the sheet, the drum and the water say, while it is typed; and a factor with where it comes from.
import type { FluidTyped, MachineTyped, Typed, Unit, Units } from "../../../core/messages";
import { given, textIn } from "../given";
import type { Water } from "./glass";

export type Metal = NonNullable<FluidTyped["metals"]>[number];
export type Way = "multiply" | "divide" | "chart";

export interface ChartRow {
  readonly strength: string;
  readonly reading: string;
}

export interface RecordForm {
  readonly factorWay: Way | "";
  readonly chart: readonly ChartRow[];
  /** Found with own jugs: they belong to that very factor and go with it. */
  readonly factorU: string;
  readonly factorOffset: string;
  readonly factorOn: string;
  /** Per cent for one Brix as it was before this change, so that a large step is asked about. */
  readonly factorBefore: string;
  readonly titrationFactor: string;
  readonly splitFactor: string;
  readonly metals: readonly Metal[];
  readonly madeForMagnesium: "yes" | "no" | "";
  readonly batch: string;
  readonly deliveredOn: string;
  readonly openedOn: string;
  readonly shelfLife: string;
  readonly firstFillPh: string;
  readonly density: string;
  readonly limitsScheme: string;
  readonly limitsLow: string;
  readonly limitsHigh: string;
  readonly limitsUnit: Unit;
  readonly hardnessUnit: Unit;
  readonly waterKind: Water | "unknown";
  readonly hardness: string;
  readonly chloride: string;
  readonly nitrate: string;
  /** What no page asks for and another tool may have written; kept as it came. */
  readonly fluidRest: Pick<FluidTyped, "target" | "strong" | "weak" | "zero">;
}

const EMPTY_PAIR: ChartRow = { strength: "", reading: "" };

export const NEW_RECORD: RecordForm = {
  factorWay: "",
  chart: [EMPTY_PAIR, EMPTY_PAIR],
  factorU: "",
  factorOffset: "",
  factorOn: "",
  factorBefore: "",
  titrationFactor: "",
  splitFactor: "",
  metals: [],
  madeForMagnesium: "",
  batch: "",
  deliveredOn: "",
  openedOn: "",
  shelfLife: "",
  firstFillPh: "",
  density: "",
  limitsScheme: "",
  limitsLow: "",
  limitsHigh: "",
  limitsUnit: "°dH",
  hardnessUnit: "°dH",
  waterKind: "unknown",
  hardness: "",
  chloride: "",
  nitrate: "",
  fluidRest: {},
};

export const HARDNESS_UNITS = ["°dH", "°fH", "gpg", "mg/L CaCO₃", "mmol/L"] as const;

export function densityUnit(pail: Unit): Unit {
  return pail.startsWith("US") ? "lb/US gal" : "kg/L";
}

function wayOf(fluid: FluidTyped): Way | "" {
  if (fluid.factor_chart !== undefined) return "chart";
  if (fluid.factor === undefined) return "";
  // Without a direction the number is per cent for one Brix, which is what multiplying means.
  return fluid.factor_direction ?? "multiply";
}

function factorPart(fluid: FluidTyped): Partial<RecordForm> {
  const factorWay = wayOf(fluid);
  const rows = fluid.factor_chart?.map(({ strength, reading }) => ({
    strength: strength.text,
    reading: reading.text,
  }));
  return {
    factorWay,
    ...(rows === undefined ? {} : { chart: [...rows, EMPTY_PAIR] }),
    factorU: fluid.factor_u?.text ?? "",
    factorOffset: fluid.factor_offset?.text ?? "",
    factorOn: fluid.factor_on ?? "",
    factorBefore: factorWay === "multiply" ? (fluid.factor?.text ?? "") : "",
  };
}

function restOf({ target, strong, weak, zero }: FluidTyped): RecordForm["fluidRest"] {
  return {
    ...(target === undefined ? {} : { target }),
    ...(strong === undefined ? {} : { strong }),
    ...(weak === undefined ? {} : { weak }),
    ...(zero === undefined ? {} : { zero }),
  };
}

export function recordFormOf({ fluid, water, units }: MachineTyped): RecordForm {
  const limits = fluid.water_limits;
  const made = fluid.made_for_magnesium;
  return {
    ...NEW_RECORD,
    ...factorPart(fluid),
    titrationFactor: fluid.titration_factor?.text ?? "",
    splitFactor: fluid.split_factor?.text ?? "",
    metals: fluid.metals ?? [],
    madeForMagnesium: made === undefined ? "" : made ? "yes" : "no",
    batch: fluid.batch ?? "",
    deliveredOn: fluid.delivered_on ?? "",
    openedOn: fluid.opened_on ?? "",
    shelfLife: fluid.shelf_life_months === undefined ? "" : String(fluid.shelf_life_months),
    firstFillPh: fluid.first_fill_ph?.text ?? "",
    density: textIn(fluid.density, densityUnit(units.pail)),
    limitsScheme: limits?.scheme ?? "",
    limitsLow: limits?.low.text ?? "",
    limitsHigh: textIn(limits?.high, limits?.low.unit ?? NEW_RECORD.limitsUnit),
    limitsUnit: limits?.low.unit ?? NEW_RECORD.limitsUnit,
    hardnessUnit: water?.hardness?.unit ?? NEW_RECORD.hardnessUnit,
    waterKind: water?.kind ?? "unknown",
    hardness: water?.hardness?.text ?? "",
    chloride: water?.chloride?.text ?? "",
    nitrate: water?.nitrate?.text ?? "",
    fluidRest: restOf(fluid),
  };
}

export function isEmptyPair(row: ChartRow): boolean {
  return row.strength.trim() === "" && row.reading.trim() === "";
}

interface FactorTyped extends RecordForm {
  readonly hasFactor: "yes" | "no" | "";
  readonly factor: string;
  readonly factorBy: NonNullable<FluidTyped["factor_known_by"]> | "";
}

/** The factor in the way it was given; nothing where nobody knows it. */
export function factorOf(form: FactorTyped): Partial<FluidTyped> {
  if (form.hasFactor !== "yes") return {};
  const by = form.factorBy === "" ? {} : { factor_known_by: form.factorBy };
  if (form.factorWay === "chart") {
    const pair = ({ strength, reading }: ChartRow): { strength: Typed; reading: Typed } => ({
      strength: { text: strength, unit: "%" },
      reading: { text: reading, unit: "Brix" },
    });
    const rows = form.chart.filter((row) => !isEmptyPair(row)).map(pair);
    return { factor_chart: rows, ...by };
  }
  const on = form.factorOn.trim();
  return {
    factor: { text: form.factor, unit: "1" },
    ...(form.factorWay === "" ? {} : { factor_direction: form.factorWay }),
    ...given("factor_u", form.factorU, "1"),
    ...given("factor_offset", form.factorOffset, "Brix"),
    ...(on === "" ? {} : { factor_on: on }),
    ...by,
  };
}

function drumOf({ batch, deliveredOn, openedOn, shelfLife }: RecordForm): Partial<FluidTyped> {
  return {
    ...(batch.trim() === "" ? {} : { batch: batch.trim() }),
    ...(deliveredOn.trim() === "" ? {} : { delivered_on: deliveredOn.trim() }),
    ...(openedOn.trim() === "" ? {} : { opened_on: openedOn.trim() }),
    // One of the list on the page, never typed.
    ...(shelfLife === "" ? {} : { shelf_life_months: Number(shelfLife) }),
  };
}

function limitsOf(form: RecordForm): Pick<FluidTyped, "water_limits"> {
  const { limitsScheme: scheme, limitsLow: low, limitsHigh: high, limitsUnit: unit } = form;
  if ([scheme, low, high].every((text) => text.trim() === "")) return {};
  return {
    water_limits: { scheme: scheme.trim(), low: { text: low, unit }, high: { text: high, unit } },
  };
}

/** The fluid's record without type, name and factor. */
export function recordOf(form: RecordForm, pail: Unit): Partial<FluidTyped> {
  const isMagnesium = form.metals.includes("magnesium");
  return {
    ...form.fluidRest,
    ...given("titration_factor", form.titrationFactor, "1"),
    ...given("split_factor", form.splitFactor, "1"),
    ...(form.metals.length === 0 ? {} : { metals: [...form.metals] }),
    ...(isMagnesium && form.madeForMagnesium !== ""
      ? { made_for_magnesium: form.madeForMagnesium === "yes" }
      : {}),
    ...drumOf(form),
    ...given("first_fill_ph", form.firstFillPh, "1"),
    ...given("density", form.density, densityUnit(pail)),
    ...limitsOf(form),
  };
}

export function waterOf(form: RecordForm): Pick<MachineTyped, "water"> {
  if (form.waterKind === "unknown") return {};
  return {
    water: {
      kind: form.waterKind,
      ...given("hardness", form.hardness, form.hardnessUnit),
      ...given("chloride", form.chloride, "mg/L"),
      ...given("nitrate", form.nitrate, "mg/L"),
    },
  };
}

/** What is cleared because it was typed in a unit that is another one now. */
export function recordWithUnits(form: { readonly units: Units }, units: Units) {
  const isSame = densityUnit(units.pail) === densityUnit(form.units.pail);
  return isSame ? {} : { density: "", zeroTemperature: "" };
}

/** A factor that is typed anew is no longer the one that was found with jugs. */
export const NOT_FOUND = { factorU: "", factorOffset: "", factorOn: "" } as const;

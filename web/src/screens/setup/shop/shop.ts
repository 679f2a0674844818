// The optional part of a machine while it is typed: what this shop measures with, knows and allows.
import type { MachineTyped, Typed, Unit, Units } from "../../../core/messages";
import { given } from "../given";

export type MeasureBy = NonNullable<NonNullable<MachineTyped["pail"]>["measure_by"]>;
export type YesNo = "yes" | "no";

export interface ShopForm {
  readonly firstMark: string;
  readonly jugFirstMark: string;
  readonly jugSize: string;
  readonly measureBy: MeasureBy;
  readonly drawOff: YesNo;
  readonly ownFluid: YesNo;
  readonly carryOut: string;
  readonly mostBuckets: string;
  readonly heaviest: string;
  readonly hasUnit: YesNo;
  readonly unitLowest: string;
  readonly unitHighest: string;
  readonly unitStep: string;
}

export const NEW_SHOP: ShopForm = {
  firstMark: "",
  jugFirstMark: "",
  jugSize: "",
  measureBy: "jug",
  drawOff: "no",
  // Only offered as another way, and its words ask for healthy fluid and the supplier's word.
  ownFluid: "yes",
  carryOut: "",
  mostBuckets: "",
  heaviest: "",
  hasUnit: "no",
  unitLowest: "",
  unitHighest: "",
  unitStep: "",
};

const yesNo = (value: boolean): YesNo => (value ? "yes" : "no");

export function shopFormOf({ pail, ways }: MachineTyped): ShopForm {
  return {
    firstMark: pail?.first_mark?.text ?? "",
    jugFirstMark: pail?.jug_first_mark?.text ?? "",
    jugSize: pail?.jug_size?.text ?? "",
    measureBy: pail?.measure_by ?? NEW_SHOP.measureBy,
    drawOff: yesNo(ways?.draw_off === true),
    ownFluid: ways?.own_fluid === undefined ? NEW_SHOP.ownFluid : yesNo(ways.own_fluid),
    carryOut: ways?.carry_out?.text ?? "",
    mostBuckets: ways?.most_buckets?.text ?? "",
    heaviest: ways?.heaviest?.text ?? "",
    hasUnit: yesNo(ways?.unit !== undefined),
    unitLowest: ways?.unit?.lowest.text ?? "",
    unitHighest: ways?.unit?.highest.text ?? "",
    unitStep: ways?.unit?.step.text ?? "",
  };
}

/** Weights of buckets come in pounds beside US pails, as in the recipe. */
export function massUnit(pail: Unit): Unit {
  return pail.startsWith("US") ? "lb" : "kg";
}

type Optional = Pick<MachineTyped, "pail" | "ways">;

export function shopOf(form: ShopForm & { readonly units: Units }): Optional {
  const { plate, pail, jug } = form.units;
  const marks = {
    ...given("first_mark", form.firstMark, pail),
    ...given("jug_first_mark", form.jugFirstMark, jug),
    ...given("jug_size", form.jugSize, jug),
  };
  const isPlain = Object.keys(marks).length === 0 && form.measureBy === NEW_SHOP.measureBy;
  const percent = (text: string): Typed => ({ text, unit: "%" });
  const unit = {
    lowest: percent(form.unitLowest),
    highest: percent(form.unitHighest),
    step: percent(form.unitStep),
  };
  return {
    ...(isPlain ? {} : { pail: { ...marks, measure_by: form.measureBy } }),
    ways: {
      draw_off: form.drawOff === "yes",
      own_fluid: form.ownFluid === "yes",
      ...given("carry_out", form.carryOut, plate),
      ...given("most_buckets", form.mostBuckets, "1"),
      ...given("heaviest", form.heaviest, massUnit(pail)),
      ...(form.hasUnit === "yes" ? { unit } : {}),
    },
  };
}

/** What is cleared because it was typed in a unit that is another one now. */
export function shopWithUnits(form: ShopForm & { readonly units: Units }, units: Units) {
  const { plate, pail, jug } = form.units;
  return {
    ...(units.pail === pail ? {} : { firstMark: "" }),
    ...(units.jug === jug ? {} : { jugFirstMark: "", jugSize: "" }),
    ...(units.plate === plate ? {} : { carryOut: "" }),
    ...(massUnit(units.pail) === massUnit(pail) ? {} : { heaviest: "" }),
  };
}

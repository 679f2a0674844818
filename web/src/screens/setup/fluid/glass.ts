// The instrument and its zero while they are typed, and what pycore is told of them.
import type { InstrumentTyped, MachineTyped, Typed, Unit } from "../../../core/messages";
import { isoWithOffset } from "../../../words/times";
import { given, textIn } from "../given";

export type Shows = InstrumentTyped["shows"];
export type Water = NonNullable<MachineTyped["water"]>["kind"];
export type Compensation = NonNullable<InstrumentTyped["compensation"]>;

export interface GlassForm {
  /** "none": nothing is written down, and the scale counts as Brix. */
  readonly glassShows: Shows | "none";
  readonly glassName: string;
  readonly factorInside: string;
  readonly resolution: string;
  readonly highest: string;
  readonly compensation: Compensation | "unknown";
  readonly zeroShows: string;
  readonly zeroOn: string;
  readonly zeroTemperature: string;
  readonly zeroWater: Water | "unknown";
  /** What no page asks for and another tool may have written; kept as it came. */
  readonly glassRest: Pick<InstrumentTyped, "kind" | "lowest">;
}

export const NEW_GLASS: GlassForm = {
  glassShows: "none",
  glassName: "",
  factorInside: "",
  resolution: "",
  highest: "",
  compensation: "unknown",
  zeroShows: "",
  zeroOn: "",
  zeroTemperature: "",
  zeroWater: "unknown",
  glassRest: {},
};

const SCALE_UNITS: Readonly<Record<Shows, Unit>> = {
  brix: "Brix",
  refractive_index: "nD",
  per_cent: "%",
};

/** How the names of pycore's quantities end that are read in the scale's own unit. */
const ENDINGS: Readonly<Record<Shows, string>> = {
  brix: "brix",
  refractive_index: "nd",
  per_cent: "pct",
};

/** Without a record of the instrument its scale counts as Brix. */
export function scaleUnit(instrument: InstrumentTyped | undefined): Unit {
  return SCALE_UNITS[instrument?.shows ?? "brix"];
}

export function scaleQuantity(kind: "reading" | "zero" | "resolution" | "scale", shows?: Shows) {
  return `${kind}_${ENDINGS[shows ?? "brix"]}`;
}

/** Degrees of the thermometer that lies beside US pails, as the weights do. */
export function warmthUnit(pail: Unit): Unit {
  return pail.startsWith("US") ? "°F" : "°C";
}

/** The day as a person writes it into the field: the text stays, and pycore reads it. */
export function today(): string {
  return isoWithOffset(new Date()).slice(0, 10);
}

export function glassFormOf({ instrument, units }: MachineTyped): GlassForm {
  if (instrument === undefined) return NEW_GLASS;
  const { shows, name, compensation, zero, kind, lowest } = instrument;
  return {
    glassShows: shows,
    glassName: name ?? "",
    factorInside: instrument.factor_inside?.text ?? "",
    resolution: instrument.resolution?.text ?? "",
    highest: instrument.highest?.text ?? "",
    compensation: compensation ?? "unknown",
    zeroShows: zero?.shows.text ?? "",
    zeroOn: zero?.on ?? "",
    zeroTemperature: textIn(zero?.temperature, warmthUnit(units.pail)),
    zeroWater: zero?.water ?? "unknown",
    glassRest: {
      ...(kind === undefined ? {} : { kind }),
      ...(lowest === undefined ? {} : { lowest }),
    },
  };
}

function zeroOf(form: GlassForm, unit: Unit, warmth: Unit): Pick<InstrumentTyped, "zero"> {
  if (form.zeroShows.trim() === "") return {};
  const on = form.zeroOn.trim();
  const temperature =
    form.compensation === "automatic" ? {} : given("temperature", form.zeroTemperature, warmth);
  return {
    zero: {
      shows: { text: form.zeroShows, unit },
      ...(on === "" ? {} : { on }),
      ...temperature,
      ...(form.zeroWater === "unknown" ? {} : { water: form.zeroWater }),
    },
  };
}

/** Nothing at all where nobody wrote the instrument down. */
export function instrumentOf(form: GlassForm, pail: Unit): Pick<MachineTyped, "instrument"> {
  const { glassShows: shows, compensation } = form;
  if (shows === "none") return {};
  const unit = SCALE_UNITS[shows];
  const name = form.glassName.trim();
  const inside: Typed = { text: form.factorInside, unit: "1" };
  return {
    instrument: {
      shows,
      ...form.glassRest,
      ...(name === "" ? {} : { name }),
      ...(shows === "per_cent" ? { factor_inside: inside } : {}),
      ...(compensation === "unknown" ? {} : { compensation }),
      ...given("resolution", form.resolution, unit),
      ...given("highest", form.highest, unit),
      ...zeroOf(form, unit, warmthUnit(pail)),
    },
  };
}

/** Another scale: digits that were typed on the old one mean nothing on it. */
export function withScale(form: GlassForm, shows: GlassForm["glassShows"]): Partial<GlassForm> {
  if (shows === form.glassShows) return {};
  return { glassShows: shows, resolution: "", highest: "", zeroShows: "", glassRest: {} };
}

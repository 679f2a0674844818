// Jugs of known strength while they are mixed and read: rows of text, a step back, and pycore's question.
import type { FitFactorBody, JugTyped, Units } from "../../../core/messages";
import { scaleUnit } from "../fluid/glass";
import type { Form } from "../form";

export interface JugRow {
  readonly water: string;
  readonly concentrate: string;
  readonly shows: string;
}

export type MeasuredWith = FitFactorBody["measured_with"];
export type JugLine = NonNullable<FitFactorBody["how"]>;

export interface JugsForm {
  readonly jugs: readonly JugRow[];
  /** The rows before one was added or taken out; empty where there is no step back. */
  readonly jugsBefore: readonly JugRow[];
  readonly jugsWith: MeasuredWith | "";
  readonly jugsHow: JugLine | "";
  /** Which tool's unit stands beside the water. */
  readonly jugsWater: "jug" | "pail";
}

const EMPTY_JUG: JugRow = { water: "", concentrate: "", shows: "" };

export const LEAST_JUGS = 2;
export const MOST_JUGS = 5;

export const NEW_JUGS: JugsForm = {
  jugs: [EMPTY_JUG, EMPTY_JUG],
  jugsBefore: [],
  jugsWith: "",
  jugsHow: "",
  jugsWater: "jug",
};

export function withJug(form: JugsForm): Partial<JugsForm> {
  return { jugs: [...form.jugs, EMPTY_JUG], jugsBefore: form.jugs };
}

export function withoutJug(form: JugsForm, row: number): Partial<JugsForm> {
  return { jugs: form.jugs.filter((_, i) => i !== row), jugsBefore: form.jugs };
}

/** Also from the step back there is a way forth. */
export function jugsUndone(form: JugsForm): Partial<JugsForm> {
  return { jugs: form.jugsBefore, jugsBefore: form.jugs };
}

export function changedJug(form: JugsForm, row: number, part: Partial<JugRow>): Partial<JugsForm> {
  const jugs = form.jugs.map((jug, i) => (i === row ? { ...jug, ...part } : jug));
  return { jugs, jugsBefore: [] };
}

/** Another tool for the water: its digits were typed in the unit of the first. */
export function withWaterTool(form: JugsForm, jugsWater: JugsForm["jugsWater"]) {
  if (jugsWater === form.jugsWater) return {};
  const jugs = form.jugs.map((jug) => ({ ...jug, water: "" }));
  return { jugsWater, jugs, jugsBefore: [] };
}

export function jugsWithUnits(form: JugsForm & { readonly units: Units }, units: Units) {
  const isJug = units.jug !== form.units.jug;
  const isWater = isJug && form.jugsWater === "jug";
  const isPail = units.pail !== form.units.pail && form.jugsWater === "pail";
  if (!isJug && !isPail) return {};
  const jugs = form.jugs.map((jug) => ({
    ...jug,
    ...(isJug ? { concentrate: "" } : {}),
    ...(isWater || isPail ? { water: "" } : {}),
  }));
  return { jugs, jugsBefore: [] };
}

export function fitBody(form: Form, instrument: FitFactorBody["instrument"], on: string) {
  const { units, jugsWater, fluidType, factorBefore, jugsHow } = form;
  const unit = scaleUnit(instrument);
  const typed = (jug: JugRow): JugTyped => ({
    water: { text: jug.water, unit: units[jugsWater] },
    concentrate: { text: jug.concentrate, unit: units.jug },
    shows: { text: jug.shows, unit },
  });
  const body: FitFactorBody = {
    jugs: form.jugs.map(typed),
    measured_with: form.jugsWith === "" ? "jug" : form.jugsWith,
    on,
    ...(jugsHow === "" ? {} : { how: jugsHow }),
    ...(instrument === undefined ? {} : { instrument }),
    ...(fluidType === "" || fluidType === "neat_oil" ? {} : { fluid_type: fluidType }),
    ...(factorBefore.trim() === "" ? {} : { last_factor: { text: factorBefore, unit: "1" } }),
  };
  return body;
}

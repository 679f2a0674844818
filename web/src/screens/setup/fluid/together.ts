// Fluid, instrument and water as pycore reads them together: for Continue, and for what stands below.
import type { ReadFluidBody, ReadFluidResult, ReadWaterBody } from "../../../core/messages";
import { useMemo } from "preact/hooks";
import { useCore, useResult } from "../../core";
import { checkOf, type Check } from "../../gate";
import { isoWithOffset } from "../../../words/times";
import { fluidOf, type Form } from "../form";
import { instrumentOf } from "./glass";
import { recordOf, waterOf } from "./record";

/** The whole record, as of `now`. */
export function fluidBody(form: Form, now: string): ReadFluidBody {
  const before = form.factorBefore.trim();
  return {
    fluid: fluidOf(form),
    ...instrumentOf(form, form.units.pail),
    ...(before === "" ? {} : { last_factor: { text: before, unit: "1" } }),
    today: now,
  };
}

/** Null where nothing is written down about the water. */
export function waterBody(form: Form): ReadWaterBody | null {
  const { water } = waterOf(form);
  if (water === undefined) return null;
  const limits = recordOf(form, form.units.pail).water_limits;
  return limits === undefined ? { water } : { water, limits };
}

/** One moment for as long as the page stands, so that the same question stays the same. */
export function useNow(): string {
  return useMemo(() => isoWithOffset(new Date()), []);
}

/** Faults and doubts of the page's own fields; those of other pages are told there. */
function onlyAt(check: Check | null, paths: readonly string[]): Check | null {
  if (check === null) return null;
  const isHere = (found: { path: string }): boolean =>
    paths.some((path) => found.path.startsWith(`body.${path}`));
  return { errors: check.errors.filter(isHere), doubts: check.doubts.filter(isHere) };
}

export function useFluidTogether(form: Form, paths: readonly string[]) {
  const core = useCore();
  const now = useNow();
  return async (): Promise<Check | null> =>
    onlyAt(checkOf(await core.ask("read_fluid", fluidBody(form, now))), paths);
}

/** Without the factor, which another page asks for: it must not keep this page from its answer. */
export function useFluidSaid(form: Form): ReadFluidResult | null {
  const now = useNow();
  const { fluid, ...body } = fluidBody({ ...form, hasFactor: "no", factorBefore: "" }, now);
  return useResult("read_fluid", { ...body, fluid });
}

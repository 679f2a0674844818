// The pour test of the machine that is being set up.
import type { CalibrateSumpBody, CalibrateSumpResult } from "../../../core/messages";
import {
  calibrateBody,
  changePours,
  poursOf,
  type PourStep,
  type PourTest,
} from "../../../store/underway/pours";
import { pointOf, type Form } from "../form";
import { given, textIn } from "../given";

export interface Test {
  readonly test: PourTest;
  readonly put: (change: Partial<PourTest>) => void;
  readonly body: (steps: readonly PourStep[]) => ReturnType<typeof calibrateBody>;
  /** What a dip on this machine is called in the list of quantities. */
  readonly dipQuantity: string;
}

export function pourTestOf(form: Form): Test {
  const kept = poursOf(form.machine, {
    units: form.units,
    fullDepth: form.fullDepth,
    maker: form.knownBy === "poured" ? "" : form.fullVolume,
    poured: form.usable,
  });
  const { stick } = form.units;
  const isTop = form.readAs === "depth" && form.dipFrom === "top";
  const reference = { text: form.referenceHeight, unit: stick };
  const ofStick = {
    ...(isTop ? { dip_from: "top" as const, reference_height: reference } : {}),
    ...(form.readAs === "depth" ? given("zero_offset", form.zeroOffset, stick) : {}),
    ...(form.kind === "table" ? {} : given("rim_depth", form.rimDepth, stick)),
    units: form.units,
  };
  return {
    test: kept.value,
    put: (change) => {
      changePours(form.machine, kept, change);
    },
    body: (steps) => calibrateBody(kept.value, steps, ofStick),
    dipQuantity: isTop ? "outage_mm" : "depth_mm",
  };
}

/** The set-up with the table that was found; what belonged to another kind of sump stays behind. */
export function withTable(
  form: Form,
  { sump }: CalibrateSumpResult,
  pourTest: CalibrateSumpBody,
): Partial<Form> {
  return {
    pourTest,
    kind: "table",
    knownBy: "poured",
    fullDepth: textIn(sump.full_depth, form.units.stick),
    points: (sump.points ?? []).map(pointOf),
    rimDepth: "",
    things: [],
  };
}

// What the fluid's sheet says beside its factor: numbers for later checks, and which water it wants.
import { Select } from "../../../elements/fields/select";
import { TextField } from "../../../elements/fields/textfield";
import { say } from "../../../words/say";
import { unitSign } from "../../../words/numbers";
import type { Form } from "../form";
import { Question, type Faults } from "../frame";
import { askedOf, givenOf, NumberRows, type NumberPart } from "../numberrow";
import { densityUnit, HARDNESS_UNITS } from "./record";
import type { SetupProps } from "../steps";
import { useFluidTogether } from "./together";

const LONGEST = 80;

function sheetParts({ units, fluidType }: Form): readonly NumberPart[] {
  const split: NumberPart = {
    part: "splitFactor",
    path: "fluid.split_factor",
    label: say("data_sheet.split_factor"),
    unit: "1",
  };
  return [
    {
      part: "firstFillPh",
      path: "fluid.first_fill_ph",
      label: say("data_sheet.first_fill_ph"),
      hint: say("data_sheet.first_fill_ph_hint"),
      unit: "1",
    },
    {
      part: "density",
      path: "fluid.density",
      label: say("data_sheet.density"),
      unit: densityUnit(units.pail),
    },
    {
      part: "titrationFactor",
      path: "fluid.titration_factor",
      label: say("data_sheet.titration_factor"),
      unit: "1",
    },
    // There is no oil to split off.
    ...(fluidType === "synthetic" ? [] : [split]),
  ];
}

function limitParts({ limitsUnit: unit }: Form): readonly NumberPart[] {
  return [
    {
      part: "limitsLow",
      path: "fluid.water_limits.low",
      label: say("data_sheet.limits_low"),
      unit,
    },
    {
      part: "limitsHigh",
      path: "fluid.water_limits.high",
      label: say("data_sheet.limits_high"),
      unit,
    },
  ];
}

function hasLimits({ limitsScheme, limitsLow, limitsHigh }: Form): boolean {
  return [limitsScheme, limitsLow, limitsHigh].some((text) => text.trim() !== "");
}

/** Published limits contradict each other, so a limit without its source means nothing. */
function schemeFault(form: Form): string | null {
  if (!hasLimits(form)) return null;
  const length = form.limitsScheme.trim().length;
  if (length === 0) return say("error.limits_scheme");
  return length > LONGEST ? say("error.name_long", { most: String(LONGEST) }) : null;
}

function Limits({ form, change, at }: Pick<SetupProps, "form" | "change"> & Faults) {
  return (
    <section class="question-part">
      <h2>{say("data_sheet.limits")}</h2>
      <TextField
        id="limits-scheme"
        label={say("data_sheet.limits_scheme")}
        hint={say("data_sheet.limits_scheme_hint")}
        number={false}
        fault={at("fluid.water_limits.scheme")}
        text={form.limitsScheme}
        onText={(limitsScheme) => {
          change({ limitsScheme });
        }}
      />
      <Select
        id="limits-unit"
        label={say("water.unit")}
        value={form.limitsUnit}
        options={HARDNESS_UNITS.map((value) => ({ value, word: unitSign(value) }))}
        onChoose={(limitsUnit) => {
          // The same digits must never be read anew in another unit.
          change({ limitsUnit, limitsLow: "", limitsHigh: "" });
        }}
      />
      <NumberRows parts={limitParts(form)} form={form} change={change} at={at} />
    </section>
  );
}

export function SheetStep(props: SetupProps) {
  const { form, change } = props;
  const parts = sheetParts(form);
  const whole = useFluidTogether(form, ["fluid.water_limits", "fluid.first_fill_ph"]);
  const limits = hasLimits(form) ? askedOf(limitParts(form), form) : [];
  return (
    <Question
      {...props}
      title={say("data_sheet.title")}
      hint={say("data_sheet.hint")}
      why={say("data_sheet.why")}
      fields={[...givenOf(parts, form), ...limits]}
      whole={whole}
      missingAt="fluid.water_limits.scheme"
      missing={schemeFault(form)}
    >
      {({ at }) => (
        <>
          <NumberRows parts={parts} form={form} change={change} at={at} />
          <Limits form={form} change={change} at={at} />
        </>
      )}
    </Question>
  );
}

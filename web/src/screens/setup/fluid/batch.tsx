// The drum in use: a bad batch is found only by its number, and an old drum by its dates.
import { DateField } from "../../../elements/fields/datefield";
import { Remarks } from "../../../elements/remarks";
import { Select } from "../../../elements/fields/select";
import { TextField } from "../../../elements/fields/textfield";
import { cautionSentence } from "../../../words/codes";
import { say, sayCount } from "../../../words/say";
import { writeDay } from "../../../words/times";
import type { Form } from "../form";
import { Question, type Faults } from "../frame";
import type { SetupProps } from "../steps";
import { useFluidSaid, useFluidTogether } from "./together";

const LONGEST = 80;
/** Months that stand on drums; chosen and not typed, since the contract wants a whole number. */
const MONTHS = ["3", "6", "9", "12", "18", "24", "36", "48", "60"] as const;
const CAUTIONS: readonly string[] = [
  "drum_age_unknown",
  "past_shelf_life",
  "past_usual_shelf_life",
  "ask_shelf_life",
];

const DATES = [
  { part: "deliveredOn", path: "fluid.delivered_on", label: say("batch.delivered_on") },
  { part: "openedOn", path: "fluid.opened_on", label: say("batch.opened_on") },
] as const;

function Dates({ form, change, at }: Pick<SetupProps, "form" | "change"> & Faults) {
  return (
    <>
      {DATES.map(({ part, path, label }) => (
        <DateField
          key={part}
          id={part}
          label={label}
          fault={at(path)}
          text={form[part]}
          onText={(text) => {
            change({ [part]: text });
          }}
        />
      ))}
    </>
  );
}

function ShelfLife({ form, change }: Pick<SetupProps, "form" | "change">) {
  const { shelfLife } = form;
  const known = ["", ...MONTHS];
  const values = known.includes(shelfLife) ? known : [...known, shelfLife];
  return (
    <Select
      id="shelf-life"
      label={say("batch.shelf_life")}
      value={shelfLife}
      options={values.map((value) => ({
        value,
        word: value === "" ? say("batch.no_shelf_life") : sayCount("batch.months", Number(value)),
      }))}
      onChoose={(months) => {
        change({ shelfLife: months });
      }}
    />
  );
}

function Said({ form }: { readonly form: Form }) {
  const said = useFluidSaid(form);
  const end = said?.drum?.best_before;
  const cautions = (said?.cautions ?? []).filter((code) => CAUTIONS.includes(code));
  const best = end === undefined ? [] : [say("batch.best_before", { day: writeDay(end) })];
  return <Remarks texts={[...best, ...cautions.map(cautionSentence)]} />;
}

export function BatchStep(props: SetupProps) {
  const { form, change } = props;
  const whole = useFluidTogether(form, ["fluid.delivered_on", "fluid.opened_on"]);
  const isLong = form.batch.trim().length > LONGEST;
  return (
    <Question
      {...props}
      title={say("batch.title")}
      hint={say("batch.hint")}
      why={say("batch.why")}
      whole={whole}
      places={DATES}
      missingAt="fluid.batch"
      missing={isLong ? say("error.name_long", { most: String(LONGEST) }) : null}
    >
      {({ at }) => (
        <>
          <TextField
            id="batch"
            label={say("batch.batch")}
            number={false}
            fault={at("fluid.batch")}
            text={form.batch}
            onText={(batch) => {
              change({ batch });
            }}
          />
          <Dates form={form} change={change} at={at} />
          <ShelfLife form={form} change={change} />
          <Said form={form} />
        </>
      )}
    </Question>
  );
}

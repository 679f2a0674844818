// The zero in water: what it showed, on which day, how warm, with which water.
import type { Option } from "../../../elements/fields/choice";
import { DateField } from "../../../elements/fields/datefield";
import { Remarks } from "../../../elements/remarks";
import { noteSentence, waterWord } from "../../../words/codes";
import { say } from "../../../words/say";
import type { Form } from "../form";
import { Question } from "../frame";
import { scaleQuantity, scaleUnit, today, warmthUnit, type GlassForm } from "./glass";
import { givenOf, NumberRows, type NumberPart } from "../numberrow";
import { ChoicePart } from "../part";
import type { SetupProps } from "../steps";
import { useFluidSaid, useFluidTogether } from "./together";

const WATERS: readonly Option<GlassForm["zeroWater"]>[] = (
  ["mains", "demineralised", "softened", "unknown"] as const
).map((value) => ({ value, word: waterWord(value) }));

const ZERO_NOTES: readonly string[] = ["zero_old", "zero_age_unknown", "zero_not_taken"];

function partsOf({ glassShows, compensation, units }: Form): readonly NumberPart[] {
  const shows = glassShows === "none" ? "brix" : glassShows;
  const zero: NumberPart = {
    part: "zeroShows",
    path: "instrument.zero.shows",
    label: say("zero.shows"),
    hint: say("zero.shows_hint"),
    unit: scaleUnit({ shows }),
    quantity: scaleQuantity("zero", shows),
  };
  const warmth: NumberPart = {
    part: "zeroTemperature",
    path: "instrument.zero.temperature",
    label: say("zero.temperature"),
    hint: say("zero.temperature_hint"),
    unit: warmthUnit(units.pail),
  };
  return compensation === "automatic" ? [zero] : [zero, warmth];
}

/** How old the zero is, from pycore's answer. */
function Said({ form }: { readonly form: Form }) {
  const notes = (useFluidSaid(form)?.notes ?? []).filter((note) => ZERO_NOTES.includes(note));
  return <Remarks texts={notes.map(noteSentence)} />;
}

/** Nearly always it was done today: with the first digit the day stands there to be typed over. */
function withDay(form: Form, part: Partial<Form>): Partial<Form> {
  const isFirst = form.zeroShows === "" && form.zeroOn === "";
  return isFirst && (part.zeroShows ?? "") !== "" ? { ...part, zeroOn: today() } : part;
}

export function ZeroStep(props: SetupProps) {
  const { form, change } = props;
  const parts = partsOf(form);
  const whole = useFluidTogether(form, ["instrument.zero"]);
  const type = (part: Partial<Form>): void => {
    change(withDay(form, part));
  };
  return (
    <Question
      {...props}
      title={say("zero.title")}
      hint={say("zero.hint")}
      why={say("zero.why")}
      fields={givenOf(parts, form)}
      whole={whole}
      places={[{ path: "instrument.zero.on" }]}
    >
      {({ at }) => (
        <>
          <NumberRows parts={parts} form={form} change={type} at={at} />
          <DateField
            id="zero-on"
            label={say("zero.on")}
            fault={at("instrument.zero.on")}
            text={form.zeroOn}
            onText={(zeroOn) => {
              change({ zeroOn });
            }}
          />
          <Said form={form} />
          <ChoicePart
            name="zero-water"
            title={say("zero.water")}
            options={WATERS}
            chosen={form.zeroWater}
            onChoose={(zeroWater) => {
              change({ zeroWater });
            }}
          />
        </>
      )}
    </Question>
  );
}

// The zero in water: what it showed, on which day, how warm, with which water.
import { useEffect } from "preact/hooks";
import type { Option } from "../../elements/choice";
import { Remarks } from "../../elements/remarks";
import { TextField } from "../../elements/textfield";
import { noteSentence, waterWord } from "../../words/codes";
import { say } from "../../words/say";
import { writeDay } from "../../words/times";
import type { Form } from "./form";
import { Question } from "./frame";
import { scaleQuantity, scaleUnit, today, warmthUnit, type GlassForm } from "./glass";
import { givenOf, NumberRows, type NumberPart } from "./numberrow";
import { ChoicePart } from "./part";
import type { SetupProps } from "./steps";
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

/** The day in words and how old the zero is, from pycore's answer. */
function Said({ form }: { readonly form: Form }) {
  const said = useFluidSaid(form);
  const isDay = said?.zero_age_d !== undefined;
  const notes = (said?.notes ?? []).filter((note) => ZERO_NOTES.includes(note));
  return (
    <Remarks
      texts={[...(isDay ? [writeDay(form.zeroOn.trim())] : []), ...notes.map(noteSentence)]}
    />
  );
}

export function ZeroStep(props: SetupProps) {
  const { form, change } = props;
  const parts = partsOf(form);
  const whole = useFluidTogether(form, ["instrument.zero"]);
  useEffect(() => {
    // Nearly always it was done today: the day stands there to be confirmed or typed over.
    if (form.zeroShows === "" && form.zeroOn === "") change({ zeroOn: today() });
  }, []);
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
          <NumberRows parts={parts} form={form} change={change} at={at} />
          <TextField
            id="zero-on"
            label={say("zero.on")}
            hint={say("zero.on_hint")}
            number={false}
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

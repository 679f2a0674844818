// Which refractometer: what its scale shows, how fine it is, and whether it corrects for warmth itself.
import type { Option } from "../../../elements/fields/choice";
import { TextField } from "../../../elements/fields/textfield";
import { compensationWord, showsWord } from "../../../words/codes";
import { say } from "../../../words/say";
import type { Form } from "../form";
import { Question } from "../frame";
import { scaleQuantity, scaleUnit, withScale, type GlassForm } from "./glass";
import { askedOf, givenOf, NumberRows, type NumberPart } from "../numberrow";
import { ChoicePart } from "../part";
import type { SetupProps } from "../steps";
import { useFluidTogether } from "./together";

const LONGEST = 80;

const SHOWS: readonly Option<GlassForm["glassShows"]>[] = (
  ["brix", "per_cent", "refractive_index", "none"] as const
).map((value) => ({ value, word: showsWord(value), note: say(`instrument.${value}_note`) }));

const COMPENSATION: readonly Option<GlassForm["compensation"]>[] = (
  ["automatic", "none", "unknown"] as const
).map((value) => ({ value, word: compensationWord(value) }));

const INSIDE: readonly NumberPart[] = [
  {
    part: "factorInside",
    path: "instrument.factor_inside",
    label: say("instrument.factor_inside"),
    hint: say("instrument.factor_inside_hint"),
    unit: "1",
  },
];

function scaleParts({ glassShows }: Form): readonly NumberPart[] {
  if (glassShows === "none") return [];
  const unit = scaleUnit({ shows: glassShows });
  return [
    {
      part: "resolution",
      path: "instrument.resolution",
      label: say("instrument.resolution"),
      unit,
      quantity: scaleQuantity("resolution", glassShows),
    },
    {
      part: "highest",
      path: "instrument.highest",
      label: say("instrument.highest"),
      hint: say("instrument.highest_hint"),
      unit,
      quantity: scaleQuantity("scale", glassShows),
    },
  ];
}

function Name({ form, change, fault }: Pick<SetupProps, "form" | "change"> & { fault?: string }) {
  return (
    <TextField
      id="glass-name"
      label={say("instrument.name")}
      hint={say("instrument.name_hint")}
      number={false}
      fault={fault}
      text={form.glassName}
      onText={(glassName) => {
        change({ glassName });
      }}
    />
  );
}

function Details({
  form,
  change,
  at,
}: Pick<SetupProps, "form" | "change"> & { at: (path: string) => string | undefined }) {
  const fault = at("instrument.name");
  return (
    <>
      {form.glassShows === "per_cent" ? (
        <>
          <p class="example">{say("instrument.once")}</p>
          <NumberRows parts={INSIDE} form={form} change={change} at={at} />
        </>
      ) : null}
      <ChoicePart
        name="compensation"
        title={say("instrument.compensation")}
        options={COMPENSATION}
        chosen={form.compensation}
        onChoose={(compensation) => {
          change({ compensation });
        }}
      />
      <NumberRows parts={scaleParts(form)} form={form} change={change} at={at} />
      <Name form={form} change={change} {...(fault === undefined ? {} : { fault })} />
    </>
  );
}

export function InstrumentStep(props: SetupProps) {
  const { form, change } = props;
  const whole = useFluidTogether(form, ["instrument.highest", "instrument.factor_inside"]);
  const isLong = form.glassName.trim().length > LONGEST;
  const inside = form.glassShows === "per_cent" ? askedOf(INSIDE, form) : [];
  return (
    <Question
      {...props}
      title={say("instrument.title")}
      hint={say("instrument.hint")}
      why={say("instrument.why")}
      fields={[...inside, ...givenOf(scaleParts(form), form)]}
      whole={whole}
      missingAt="instrument.name"
      missing={isLong ? say("error.name_long", { most: String(LONGEST) }) : null}
    >
      {({ at }) => (
        <>
          <ChoicePart
            name="glass-shows"
            title={say("instrument.shows")}
            options={SHOWS}
            chosen={form.glassShows}
            onChoose={(shows) => {
              change(withScale(form, shows));
            }}
          />
          {form.glassShows === "none" ? null : <Details form={form} change={change} at={at} />}
        </>
      )}
    </Question>
  );
}

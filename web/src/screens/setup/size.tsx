// The full mark: how deep and how many litres, in the way this sump is known.
import { Choice, type Option } from "../../elements/choice";
import { TextField } from "../../elements/textfield";
import { knownByWord } from "../../words/codes";
import { say } from "../../words/say";
import { useCore } from "../core";
import { checkOf } from "../gate";
import { isEmptyPoint, sumpOf, type Form, type KnownBy } from "./form";
import { Question, type Asked, type Faults } from "./frame";
import { PointRows } from "./points";
import type { SetupProps } from "./steps";

const KNOWN_BY: readonly Option<KnownBy>[] = (["plate", "poured", "said"] as const).map(
  (value) => ({ value, word: knownByWord(value) }),
);

function fieldsOf(form: Form): readonly Asked[] {
  const stick = form.units.stick;
  const full: Asked = { path: "sump.full_depth", text: form.fullDepth, unit: stick };
  if (form.kind === "box") {
    return [
      { path: "sump.length", text: form.length, unit: stick },
      { path: "sump.width", text: form.width, unit: stick },
      full,
    ];
  }
  if (form.kind === "proportional")
    return [full, { path: "sump.full_volume", text: form.fullVolume, unit: form.units.plate }];
  const filled = form.points.filter((point) => !isEmptyPoint(point));
  const rows = filled.flatMap((point, i): Asked[] => [
    { path: `sump.points[${i}].depth`, text: point.depth, unit: stick },
    { path: `sump.points[${i}].volume`, text: point.volume, unit: form.units.plate },
  ]);
  return [...rows, full];
}

function SizeFields({ form, change, at }: Pick<SetupProps, "form" | "change"> & Faults) {
  const stick = form.units.stick;
  const full = (
    <TextField
      id="full-depth"
      label={say("size.full_depth")}
      unit={stick}
      text={form.fullDepth}
      fault={at("sump.full_depth")}
      onText={(fullDepth) => {
        change({ fullDepth });
      }}
    />
  );
  if (form.kind === "table")
    return (
      <>
        {full}
        <PointRows form={form} change={change} at={at} />
      </>
    );
  if (form.kind === "box") {
    return (
      <>
        <TextField
          id="length"
          label={say("size.length")}
          unit={stick}
          text={form.length}
          fault={at("sump.length")}
          onText={(length) => {
            change({ length });
          }}
        />
        <TextField
          id="width"
          label={say("size.width")}
          unit={stick}
          text={form.width}
          fault={at("sump.width")}
          onText={(width) => {
            change({ width });
          }}
        />
        {full}
      </>
    );
  }
  return (
    <>
      {full}
      <TextField
        id="full-volume"
        label={say("size.full_volume")}
        unit={form.units.plate}
        text={form.fullVolume}
        fault={at("sump.full_volume")}
        onText={(fullVolume) => {
          change({ fullVolume });
        }}
      />
    </>
  );
}

export function SizeStep(props: SetupProps) {
  const { form, change } = props;
  const core = useCore();
  // The rim comes later and may not fit any more; only this page's own numbers are looked at together.
  const whole = () =>
    core.ask("assess_sump", { sump: sumpOf({ ...form, rimDepth: "" }) }).then(checkOf);
  const kind = form.kind === "" ? "proportional" : form.kind;
  return (
    <Question
      {...props}
      title={say(`size.${kind}_title`)}
      hint={say(`size.${kind}_hint`)}
      why={say("size.why")}
      fields={fieldsOf(form)}
      whole={whole}
      missing={form.knownBy === "" ? say("error.known_by") : null}
    >
      {({ at }) => (
        <>
          <SizeFields form={form} change={change} at={at} />
          <h2 id="known-by">{say("size.known_by")}</h2>
          <Choice
            name="known-by"
            labelledBy="known-by"
            options={KNOWN_BY}
            chosen={form.knownBy}
            onChoose={(knownBy) => {
              change({ knownBy });
            }}
          />
        </>
      )}
    </Question>
  );
}

// The full mark: how deep and how many litres, in the way this sump is known.
import { say } from "../../words/say";
import { useCore } from "../core";
import { checkOf } from "../gate";
import { isEmptyPoint, sumpOf, type Form } from "./form";
import { Question, type Asked } from "./frame";
import { askedOf, NumberRows, type NumberPart } from "./numberrow";
import { PointRows } from "./points";
import type { SetupProps } from "./steps";

function partsOf(form: Form): readonly NumberPart[] {
  const { stick, plate } = form.units;
  const full: NumberPart = {
    part: "fullDepth",
    path: "sump.full_depth",
    label: say("size.full_depth"),
    unit: stick,
  };
  if (form.kind === "table") return [full];
  if (form.kind !== "box") {
    const label = say("size.full_volume");
    return [full, { part: "fullVolume", path: "sump.full_volume", label, unit: plate }];
  }
  return [
    { part: "length", path: "sump.length", label: say("size.length"), unit: stick },
    { part: "width", path: "sump.width", label: say("size.width"), unit: stick },
    full,
  ];
}

function pointsOf(form: Form): readonly Asked[] {
  if (form.kind !== "table") return [];
  const { stick, plate } = form.units;
  const filled = form.points.filter((point) => !isEmptyPoint(point));
  return filled.flatMap((point, i): Asked[] => [
    { path: `sump.points[${i}].depth`, text: point.depth, unit: stick },
    { path: `sump.points[${i}].volume`, text: point.volume, unit: plate },
  ]);
}

export function SizeStep(props: SetupProps) {
  const { form, change } = props;
  const core = useCore();
  // Rim and never-above mark come later and may not fit any more; only this page's own numbers are looked at together.
  const sump = sumpOf({ ...form, rimDepth: "", neverAbove: "" });
  const kind = form.kind === "" ? "proportional" : form.kind;
  const parts = partsOf(form);
  return (
    <Question
      {...props}
      title={say(`size.${kind}_title`)}
      hint={say(`size.${kind}_hint`)}
      why={say("size.why")}
      fields={[...askedOf(parts, form), ...pointsOf(form)]}
      whole={() => core.ask("assess_sump", { sump }).then(checkOf)}
    >
      {({ at }) => (
        <>
          <NumberRows parts={parts} form={form} change={change} at={at} />
          {form.kind === "table" ? <PointRows form={form} change={change} at={at} /> : null}
        </>
      )}
    </Question>
  );
}

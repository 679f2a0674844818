// What this shop allows and what one person carries. Nothing here has to be answered.
import type { Option } from "../../../elements/fields/choice";
import { say } from "../../../words/say";
import type { Form } from "../form";
import { Question } from "../frame";
import { askedOf, givenOf, NumberRows, type NumberPart } from "../numberrow";
import { ChoicePart } from "../part";
import { massUnit, type ShopForm, type YesNo } from "./shop";
import type { SetupProps } from "../steps";
import { useTogether } from "../together";

function carryParts({ units }: Form): readonly NumberPart[] {
  return [
    {
      part: "carryOut",
      path: "ways.carry_out",
      label: say("allow.carry_out"),
      hint: say("allow.carry_out_hint"),
      unit: units.plate,
    },
    {
      part: "mostBuckets",
      path: "ways.most_buckets",
      label: say("allow.most_buckets"),
      hint: say("allow.most_buckets_hint"),
      unit: "1",
    },
    {
      part: "heaviest",
      path: "ways.heaviest",
      label: say("allow.heaviest"),
      hint: say("allow.heaviest_hint"),
      unit: massUnit(units.pail),
    },
  ];
}

const UNIT_PARTS: readonly NumberPart[] = [
  { part: "unitLowest", path: "ways.unit.lowest", label: say("allow.unit_lowest"), unit: "%" },
  { part: "unitHighest", path: "ways.unit.highest", label: say("allow.unit_highest"), unit: "%" },
  { part: "unitStep", path: "ways.unit.step", label: say("allow.unit_step"), unit: "%" },
];

interface Row {
  readonly part: keyof Pick<ShopForm, "drawOff" | "ownFluid" | "hasUnit">;
  readonly title: string;
  readonly options: readonly Option<YesNo>[];
}

const DRAW_OFF: Row = {
  part: "drawOff",
  title: say("allow.draw_off"),
  options: [
    { value: "yes", word: say("draw_off.yes"), note: say("draw_off.yes_note") },
    { value: "no", word: say("draw_off.no") },
  ],
};

const OWN_FLUID: Row = {
  part: "ownFluid",
  title: say("allow.own_fluid"),
  options: [
    { value: "yes", word: say("own_fluid.yes"), note: say("own_fluid.yes_note") },
    { value: "no", word: say("own_fluid.no") },
  ],
};

const HAS_UNIT: Row = {
  part: "hasUnit",
  title: say("allow.unit"),
  options: [
    { value: "no", word: say("has_unit.no") },
    { value: "yes", word: say("has_unit.yes"), note: say("has_unit.yes_note") },
  ],
};

function RowChoice({ row, form, change }: Pick<SetupProps, "form" | "change"> & { row: Row }) {
  const { part, title, options } = row;
  return (
    <ChoicePart
      name={part}
      title={title}
      options={options}
      chosen={form[part]}
      onChoose={(value) => {
        change({ [part]: value });
      }}
    />
  );
}

export function AllowStep(props: SetupProps) {
  const { form, change } = props;
  const carry = carryParts(form);
  const unit = form.hasUnit === "yes" ? UNIT_PARTS : [];
  const whole = useTogether(form, ["ways"]);
  return (
    <Question
      {...props}
      title={say("allow.title")}
      hint={say("allow.hint")}
      why={say("allow.why")}
      fields={[...givenOf(carry, form), ...askedOf(unit, form)]}
      whole={whole}
    >
      {({ at }) => (
        <>
          <RowChoice row={DRAW_OFF} form={form} change={change} />
          <RowChoice row={OWN_FLUID} form={form} change={change} />
          <NumberRows parts={carry} form={form} change={change} at={at} />
          <RowChoice row={HAS_UNIT} form={form} change={change} />
          <NumberRows parts={unit} form={form} change={change} at={at} />
        </>
      )}
    </Question>
  );
}

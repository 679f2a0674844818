// How the level of this machine is taken: with what, from where, and when it is true.
import type { Option } from "../../../elements/fields/choice";
import { Select } from "../../../elements/fields/select";
import { ToolDrawing } from "../../../elements/drawings/tools";
import { dipFromWord, levelTrueWord, readAsWord } from "../../../words/codes";
import { say, sayCount } from "../../../words/say";
import type { Form } from "../form";
import { Question } from "../frame";
import { askedOf, givenOf, NumberRows, type NumberPart } from "../numberrow";
import { ChoicePart } from "../part";
import type { SetupProps } from "../steps";
import type { DipFrom, LevelTrue, ReadAs } from "./tank";
import { useTogether } from "../together";

const READ_AS: readonly Option<ReadAs>[] = [
  { value: "depth", word: readAsWord("depth"), drawing: <ToolDrawing tool="stick" /> },
  {
    value: "volume",
    word: readAsWord("volume"),
    note: say("read_as.volume_note"),
    drawing: <ToolDrawing tool="scale" />,
  },
  {
    value: "gauge",
    word: readAsWord("gauge"),
    note: say("read_as.gauge_note"),
    drawing: <ToolDrawing tool="gauge" />,
  },
];
const DIP_FROM: readonly Option<DipFrom>[] = [
  { value: "bottom", word: dipFromWord("bottom"), drawing: <ToolDrawing tool="floor" /> },
  {
    value: "top",
    word: dipFromWord("top"),
    note: say("dip_from.top_note"),
    drawing: <ToolDrawing tool="from_top" />,
  },
];
const LEVEL_TRUE: readonly Option<LevelTrue>[] = [
  { value: "stopped", word: levelTrueWord("stopped") },
  { value: "running", word: levelTrueWord("running"), note: say("level_true.running_note") },
];
const DIVIDED: readonly Option<"no" | "yes">[] = [
  { value: "no", word: say("divided.no") },
  { value: "yes", word: say("divided.yes"), note: say("divided.yes_note") },
];
/** Usual waiting times; a machine set up elsewhere keeps its own. */
const WAITS = ["", "1", "2", "5", "10", "15", "20", "30", "60"];

const MIX_TIMES = ["", "15", "30", "60", "120", "240", "480"];

function minuteOptions(usual: readonly string[], chosen: string, open: string) {
  const known = usual.includes(chosen) ? usual : [...usual, chosen];
  return known.map((value) => ({
    value,
    word: value === "" ? open : sayCount("dipping.minutes", Number(value)),
  }));
}

function stickParts({ units: { stick }, dipFrom }: Form) {
  const height: NumberPart = {
    part: "referenceHeight",
    path: "sump.reference_height",
    label: say("dipping.reference_height"),
    hint: say("dipping.reference_height_hint"),
    unit: stick,
  };
  const zero: NumberPart = {
    part: "zeroOffset",
    path: "sump.zero_offset",
    label: say("dipping.zero_offset"),
    hint: say("dipping.zero_offset_hint"),
    unit: stick,
  };
  return { needed: dipFrom === "top" ? [height] : [], free: [zero] };
}

type PartProps = Pick<SetupProps, "form" | "change">;

function PumpPart({ form, change }: PartProps) {
  return (
    <>
      <ChoicePart
        name="level-true"
        title={say("dipping.level_true")}
        options={LEVEL_TRUE}
        chosen={form.levelTrue}
        onChoose={(levelTrue) => {
          change({ levelTrue, ...(levelTrue === "running" ? { wait: "" } : {}) });
        }}
      />
      {form.levelTrue === "running" ? null : (
        <Select
          id="wait"
          label={say("dipping.wait")}
          value={form.wait}
          options={minuteOptions(WAITS, form.wait, say("facts.not_given"))}
          onChoose={(wait) => {
            change({ wait });
          }}
        />
      )}
      <Select
        id="mix-time"
        label={say("dipping.mix_time")}
        value={form.mixTime}
        options={minuteOptions(MIX_TIMES, form.mixTime, say("dipping.mix_time_usual"))}
        onChoose={(mixTime) => {
          change({ mixTime });
        }}
      />
    </>
  );
}

function SidesPart({ form, change }: PartProps) {
  return (
    <ChoicePart
      name="divided"
      title={say("dipping.divided")}
      options={DIVIDED}
      chosen={form.divided}
      onChoose={(divided) => {
        change({ divided });
      }}
    />
  );
}

export function DippingStep(props: SetupProps) {
  const { form, change } = props;
  const isDipped = form.readAs === "depth";
  const { needed, free } = stickParts(form);
  const whole = useTogether(form, ["sump"]);
  return (
    <Question
      {...props}
      title={say("dipping.title")}
      hint={say("dipping.hint")}
      why={say("dipping.why")}
      fields={isDipped ? [...askedOf(needed, form), ...givenOf(free, form)] : []}
      whole={whole}
    >
      {({ at }) => (
        <>
          <ChoicePart
            name="read-as"
            title={say("dipping.read_as")}
            options={READ_AS}
            chosen={form.readAs}
            onChoose={(readAs) => {
              change({ readAs });
            }}
          />
          {isDipped ? (
            <>
              <ChoicePart
                name="dip-from"
                title={say("dipping.dip_from")}
                options={DIP_FROM}
                chosen={form.dipFrom}
                onChoose={(dipFrom) => {
                  change({ dipFrom });
                }}
              />
              <NumberRows parts={[...needed, ...free]} form={form} change={change} at={at} />
            </>
          ) : null}
          <PumpPart form={form} change={change} />
          {isDipped ? <SidesPart form={form} change={change} /> : null}
        </>
      )}
    </Question>
  );
}

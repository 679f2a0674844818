// The pour test's first page: how it starts, and what to mind before the first bucket.
import { OtherAction } from "../../../elements/buttons";
import type { Option } from "../../../elements/fields/choice";
import { TextField } from "../../../elements/fields/textfield";
import { endPours, type PourTest } from "../../../store/underway/pours";
import { vesselWord } from "../../../words/codes";
import { say, sayCount, type Key } from "../../../words/say";
import { Question, type Asked, type Faults } from "../frame";
import { ChoicePart } from "../part";
import { pourTestOf } from "./pourtest";
import type { SetupProps } from "../steps";

const CAUTIONS: readonly Key[] = [
  "pours.caution_charge",
  "pours.caution_machine",
  "pours.caution_hands",
  "pours.caution_lift",
];

const START: readonly Option<"empty" | "rest">[] = (["empty", "rest"] as const).map((value) => ({
  value,
  word: say(`pours.start_${value}`),
  note: say(`pours.start_${value}_note`),
}));

const VESSEL: readonly Option<PourTest["vessel"]>[] = (["marks", "checked"] as const).map(
  (value) => ({ value, word: vesselWord(value), note: say(`vessel.${value}_note`) }),
);

interface FieldRow extends Asked {
  readonly part: "fullDepth" | "startDepth" | "maker";
  readonly label: string;
  readonly hint?: string;
}

function rowsOf(test: PourTest, dipQuantity: string): readonly FieldRow[] {
  const { stick, plate } = test.units;
  const full: FieldRow = {
    part: "fullDepth",
    path: "full_depth",
    text: test.fullDepth,
    unit: stick,
    label: say("size.full_depth"),
    ...(dipQuantity === "outage_mm" ? { hint: say("pours.full_from_floor") } : {}),
  };
  const start: FieldRow = {
    part: "startDepth",
    path: "start_depth",
    text: test.startDepth,
    unit: stick,
    label: say("pours.start_depth"),
    quantity: dipQuantity,
  };
  const maker: FieldRow = {
    part: "maker",
    path: "maker_volume",
    text: test.maker,
    unit: plate,
    label: say("pours.maker"),
    hint: say("pours.maker_hint"),
  };
  return test.start === "rest" ? [start, full, maker] : [full, maker];
}

function UnderWay({ count, onAgain }: { readonly count: number; readonly onAgain: () => void }) {
  if (count === 0) return null;
  return (
    <section class="task">
      <p>{sayCount("pours.under_way", count)}</p>
      <OtherAction onPress={onAgain}>{say("pours.again")}</OtherAction>
    </section>
  );
}

interface RowsProps extends Faults {
  readonly rows: readonly FieldRow[];
  readonly put: (change: Partial<PourTest>) => void;
}

function Rows({ rows, at, put }: RowsProps) {
  return (
    <>
      {rows.map(({ part, path, label, hint, unit, text }) => (
        <TextField
          key={part}
          id={`pours-${part}`}
          label={label}
          {...(hint === undefined ? {} : { hint })}
          unit={unit}
          text={text}
          fault={at(path)}
          onText={(typed) => {
            put({ [part]: typed });
          }}
        />
      ))}
    </>
  );
}

function Cautions() {
  return (
    <ul class="cautions">
      {CAUTIONS.map((key) => (
        <li key={key}>{say(key)}</li>
      ))}
    </ul>
  );
}

export function PoursStep(props: SetupProps) {
  const { form, change } = props;
  const { test, put, dipQuantity } = pourTestOf(form);
  const rows = rowsOf(test, dipQuantity);
  const again = (): void => {
    endPours(form.machine);
    // The page looks at the set-up, not at the test that is gone.
    change({});
  };
  return (
    <Question
      {...props}
      title={say(test.steps.length > 0 ? "pours.resume_title" : "pours.title")}
      hint={say("pours.hint")}
      why={say("pours.why")}
      fields={rows.filter(({ part, text }) => part !== "maker" || text.trim() !== "")}
      missing={test.start === "" ? say("error.pour_start") : null}
    >
      {({ at }) => (
        <>
          <UnderWay count={test.steps.length} onAgain={again} />
          <Cautions />
          <ChoicePart
            name="pour-start"
            title={say("pours.start")}
            options={START}
            chosen={test.start}
            onChoose={(start) => {
              put({ start });
            }}
          />
          <Rows rows={rows} at={at} put={put} />
          <ChoicePart
            name="vessel"
            title={say("pours.vessel")}
            options={VESSEL}
            chosen={test.vessel}
            onChoose={(vessel) => {
              put({ vessel });
            }}
          />
        </>
      )}
    </Question>
  );
}

// Things that stand in the coolant: rows that can be added and taken out.
import { OtherAction } from "../../../elements/buttons";
import type { Option } from "../../../elements/fields/choice";
import { TextField } from "../../../elements/fields/textfield";
import { thingByWord } from "../../../words/codes";
import { say } from "../../../words/say";
import { useCore } from "../../core";
import { checkOf } from "../../gate";
import type { Form } from "../form";
import { Question, type Asked, type Faults } from "../frame";
import { ChoicePart } from "../part";
import { Preview } from "./preview";
import type { SetupProps } from "../steps";
import { isMeasured, sumpOf } from "./tank";
import {
  areaParts,
  EMPTY_THING,
  isEmptyThing,
  MOST_THINGS,
  type Measured,
  type Thing,
} from "./things";

const BY: readonly Option<Measured>[] = (["sides", "round", "volume"] as const).map((value) => ({
  value,
  word: thingByWord(value),
}));

/** The tank and its things alone: marks, stick and circuit have pages of their own. */
const ALONE = {
  neverAbove: "",
  dipFrom: "bottom",
  zeroOffset: "",
  hiddenVolume: "",
  rest: "",
} as const;

const PATHS = {
  from: "from_depth",
  to: "to_depth",
  length: "length",
  width: "width",
  diameter: "diameter",
  volume: "volume",
} as const;
type Part = keyof typeof PATHS;

/** Where it ends may stay open, except where a volume is spread between two heights. */
function partsOf(thing: Thing): readonly Part[] {
  return ["from", "to", ...areaParts(thing)];
}

function pathOf(row: number, part: Part): string {
  return `sump.obstacles[${row}].${PATHS[part]}`;
}

function unitOf(form: Form, part: Part) {
  return part === "volume" ? form.units.plate : form.units.stick;
}

function askedOf(form: Form): readonly Asked[] {
  const filled = form.things.filter((thing) => !isEmptyThing(thing));
  return filled.flatMap((thing, row) =>
    partsOf(thing)
      .filter((part) => part !== "to" || thing.to.trim() !== "" || thing.by === "volume")
      .map((part) => ({ path: pathOf(row, part), text: thing[part], unit: unitOf(form, part) })),
  );
}

interface RowProps extends Pick<SetupProps, "form" | "change">, Faults {
  readonly row: number;
  /** Its number among the filled rows, which pycore counts. */
  readonly sent: number;
}

function ThingRow({ form, change, at, row, sent }: RowProps) {
  const thing = form.things[row];
  if (thing === undefined) return null;
  const put = (part: Partial<Thing>): void => {
    change({ things: form.things.map((other, i) => (i === row ? { ...other, ...part } : other)) });
  };
  const number = String(row + 1);
  return (
    <section class="thing" aria-labelledby={`thing-${number}`}>
      <div class="thing-head">
        <h2 id={`thing-${number}`}>{say("things.row", { row: number })}</h2>
        <button
          type="button"
          class="swap"
          aria-label={say("things.remove_this", { row: number })}
          onClick={() => {
            change({ things: form.things.filter((_, i) => i !== row) });
          }}
        >
          {say("things.remove")}
        </button>
      </div>
      <ChoicePart
        name={`thing-by-${number}`}
        title={say("things.by")}
        options={BY}
        chosen={thing.by}
        onChoose={(by) => {
          put({ by });
        }}
      />
      {partsOf(thing).map((part) => (
        <TextField
          key={part}
          id={`thing-${number}-${part}`}
          label={say(`things.${part}`)}
          {...(part === "to" ? { hint: say("things.to_hint") } : {})}
          unit={unitOf(form, part)}
          text={thing[part]}
          fault={at(pathOf(sent, part))}
          onText={(text) => {
            put({ [part]: text });
          }}
        />
      ))}
    </section>
  );
}

/** Numbers of the rows as pycore counts them: an empty row is not sent. */
function sentRows(things: readonly Thing[]): readonly number[] {
  return things.map(
    (_, row) => things.slice(0, row).filter((thing) => !isEmptyThing(thing)).length,
  );
}

export function ThingsStep(props: SetupProps) {
  const { form, change } = props;
  const core = useCore();
  const sump = sumpOf({ ...form, ...ALONE });
  const sent = sentRows(form.things);
  return (
    <Question
      {...props}
      title={say("things.title")}
      hint={say(isMeasured(form.kind) ? "things.hint" : "things.not_here")}
      why={say("things.why")}
      fields={isMeasured(form.kind) ? askedOf(form) : []}
      whole={() => core.ask("assess_sump", { sump }).then(checkOf)}
    >
      {({ at }) =>
        isMeasured(form.kind) ? (
          <>
            {form.things.map((_, row) => (
              <ThingRow
                key={row}
                form={form}
                change={change}
                at={at}
                row={row}
                sent={sent[row] ?? row}
              />
            ))}
            {form.things.length >= MOST_THINGS ? null : (
              <OtherAction
                onPress={() => {
                  change({ things: [...form.things, EMPTY_THING] });
                }}
              >
                {say("things.add")}
              </OtherAction>
            )}
            <Preview sump={sump} units={form.units} />
          </>
        ) : null
      }
    </Question>
  );
}

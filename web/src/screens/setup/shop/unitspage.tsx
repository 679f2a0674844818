// One unit per tool: mixed tools at one machine are normal.
import type { Units } from "../../../core/messages";
import { Select } from "../../../elements/fields/select";
import { ToolDrawing, type Tool } from "../../../elements/drawings/tools";
import { unitSign } from "../../../words/numbers";
import { say, type Key } from "../../../words/say";
import { Question } from "../frame";
import type { SetupProps } from "../steps";
import { JUG_UNITS, PAIL_UNITS, PLATE_UNITS, STICK_UNITS, withUnits } from "./units";

interface Row {
  readonly tool: keyof Units & Tool;
  readonly label: Key;
  readonly units: readonly Units[keyof Units][];
}

const ROWS: readonly Row[] = [
  { tool: "plate", label: "units.plate", units: PLATE_UNITS },
  { tool: "stick", label: "units.stick", units: STICK_UNITS },
  { tool: "pail", label: "units.pail", units: PAIL_UNITS },
  { tool: "jug", label: "units.jug", units: JUG_UNITS },
];

export function UnitsStep(props: SetupProps) {
  const { form, change } = props;
  return (
    <Question {...props} title={say("units.title")} hint={say("units.hint")} why={say("units.why")}>
      {() =>
        ROWS.map(({ tool, label, units }) => (
          <Select
            key={tool}
            id={`unit-${tool}`}
            label={say(label)}
            drawing={<ToolDrawing tool={tool} />}
            value={form.units[tool]}
            options={units.map((unit) => ({
              value: unit,
              word: unitSign(unit),
            }))}
            onChoose={(unit) => {
              change(withUnits(form, { ...form.units, [tool]: unit }));
            }}
          />
        ))
      }
    </Question>
  );
}

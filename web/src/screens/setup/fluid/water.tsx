// The mixing water: its kind, and what a test strip or the waterworks say of it.
import type { Option } from "../../../elements/fields/choice";
import { Remarks } from "../../../elements/remarks";
import { Select } from "../../../elements/fields/select";
import { cautionSentence, waterWord } from "../../../words/codes";
import { unitSign, write } from "../../../words/numbers";
import { say } from "../../../words/say";
import { useCore, useResult } from "../../core";
import { checkOf, type Check } from "../../gate";
import type { Form } from "../form";
import { Question } from "../frame";
import { givenOf, NumberRows, type NumberPart } from "../numberrow";
import { ChoicePart } from "../part";
import { HARDNESS_UNITS, type RecordForm } from "./record";
import type { SetupProps } from "../steps";
import { waterBody } from "./together";

const KINDS: readonly Option<RecordForm["waterKind"]>[] = (
  ["mains", "demineralised", "softened", "unknown"] as const
).map((value) => ({ value, word: waterWord(value) }));

function hardnessPart({ hardnessUnit: unit }: Form): NumberPart {
  return { part: "hardness", path: "water.hardness", label: say("water.hardness"), unit };
}

const SALTS: readonly NumberPart[] = [
  { part: "chloride", path: "water.chloride", label: say("water.chloride"), unit: "mg/L" },
  { part: "nitrate", path: "water.nitrate", label: say("water.nitrate"), unit: "mg/L" },
];

/** The same hardness in every unit, so that any strip and any sheet can be compared with it. */
function Said({ form }: { readonly form: Form }) {
  const body = waterBody(form);
  const said = useResult("read_water", body);
  const units = said?.hardness?.shown.map(write).join(" = ") ?? "";
  const limits =
    said?.shown.low === undefined || said.shown.high === undefined
      ? []
      : [
          say("water.limits", {
            low: write(said.shown.low),
            high: write(said.shown.high),
            scheme: said.scheme ?? "",
          }),
        ];
  const cautions = said?.cautions.map(cautionSentence) ?? [];
  return <Remarks texts={[...(units === "" ? [] : [units]), ...limits, ...cautions]} />;
}

function useWaterTogether(form: Form) {
  const core = useCore();
  return async (): Promise<Check | null> => {
    const body = waterBody(form);
    if (body === null) return null;
    const check = checkOf(await core.ask("read_water", body));
    if (check === null) return null;
    const isHere = ({ path }: { path: string }): boolean => path.startsWith("body.water");
    return { errors: check.errors.filter(isHere), doubts: check.doubts.filter(isHere) };
  };
}

export function WaterStep(props: SetupProps) {
  const { form, change } = props;
  const isKnown = form.waterKind !== "unknown";
  const parts = isKnown ? [hardnessPart(form), ...SALTS] : [];
  const whole = useWaterTogether(form);
  return (
    <Question
      {...props}
      title={say("water.title")}
      hint={say("water.hint")}
      why={say("water.why")}
      fields={givenOf(parts, form)}
      whole={whole}
    >
      {({ at }) => (
        <>
          <ChoicePart
            name="water-kind"
            title={say("water.kind")}
            options={KINDS}
            chosen={form.waterKind}
            onChoose={(waterKind) => {
              change({ waterKind });
            }}
          />
          {isKnown ? (
            <>
              <Select
                id="hardness-unit"
                label={say("water.unit")}
                value={form.hardnessUnit}
                options={HARDNESS_UNITS.map((value) => ({ value, word: unitSign(value) }))}
                onChoose={(hardnessUnit) => {
                  // The same digits must never be read anew in another unit.
                  change({ hardnessUnit, hardness: "" });
                }}
              />
              <NumberRows parts={parts} form={form} change={change} at={at} />
            </>
          ) : null}
          <Said form={form} />
        </>
      )}
    </Question>
  );
}

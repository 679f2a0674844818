// The bucket that a scale is drawn for: its inside measures, or two fills whose depth was measured.
import type { DeskError, Doubt, Unit } from "../../core/messages";
import type { Option } from "../../elements/fields/choice";
import { MainAction } from "../../elements/buttons";
import { DoubtQuestion } from "../../elements/doubt";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { TextField } from "../../elements/fields/textfield";
import { Hint } from "../../elements/why";
import type { MachineEntry } from "../../store/log/entry";
import { doubtSentence, errorSentence } from "../../words/errors";
import { fieldById, fieldFromPath } from "../../words/fields";
import { write } from "../../words/numbers";
import { say, type Key } from "../../words/say";
import { useCore } from "../core";
import { CoreTrouble } from "../foot";
import { checkOf, emptyError, useGate, type Gate } from "../gate";
import { back, replace } from "../route";
import { ChoicePart } from "../setup/part";
import { changePail, pailFormOf, pailShape, type PailForm, type PailKind } from "./pailform";
import { paper } from "./settings";

interface Row {
  readonly part: Exclude<keyof PailForm, "kind" | "stick" | "pail" | "kept">;
  readonly path: string;
  readonly label: Key;
  readonly tool: "stick" | "pail";
}

const SHAPE = "body.pail_shape";
const ROWS: Readonly<Record<PailKind, readonly Row[]>> = {
  diameters: [
    { part: "floor", path: "floor_diameter", label: "print.pail_floor", tool: "stick" },
    { part: "brim", path: "brim_diameter", label: "print.pail_brim", tool: "stick" },
    { part: "height", path: "height", label: "print.pail_height", tool: "stick" },
  ],
  fills: [
    { part: "lowDepth", path: "fills[0].depth", label: "print.pail_low_depth", tool: "stick" },
    { part: "lowVolume", path: "fills[0].volume", label: "print.pail_low_volume", tool: "pail" },
    { part: "highDepth", path: "fills[1].depth", label: "print.pail_high_depth", tool: "stick" },
    { part: "highVolume", path: "fills[1].volume", label: "print.pail_high_volume", tool: "pail" },
  ],
};

const KINDS: readonly Option<PailKind>[] = (["diameters", "fills"] as const).map((value) => ({
  value,
  word: say(`print.pail_${value}`),
  note: say(`print.pail_${value}_note`),
}));

interface PailProps {
  readonly machine: MachineEntry;
  /** Opened from the scale, to which it returns. */
  readonly isChange: boolean;
}

function usePail({ machine, isChange }: PailProps) {
  const core = useCore();
  const id = machine.machine;
  const typed = machine.body.machine;
  const form = pailFormOf(id, typed.units);
  const change = (part: Partial<PailForm>): void => {
    changePail(id, { ...form, ...part });
  };
  const rows = ROWS[form.kind];
  const empty = rows.filter(({ part }) => form[part].trim() === "");
  const shape = pailShape(form);
  const gate = useGate({
    plain: empty.map(({ path }) => emptyError(`${SHAPE}.${path}`)),
    // The scale itself is asked for, so that bucket and usual fill are looked at together.
    look: async () =>
      checkOf(
        await core.ask("draw_sheet", {
          kind: "bucket_scale",
          paper: paper.value,
          machine: typed,
          pail_shape: shape,
        }),
      ),
    kept: form.kept,
    onKept: (kept) => {
      change({ kept });
    },
    onPass: () => {
      if (isChange) back("machines", id, "print", "bucket_scale");
      else replace("machines", id, "print", "bucket_scale");
    },
    about: JSON.stringify([shape, form.kept]),
  });
  return { form, change, rows, gate };
}

function Rows({
  rows,
  form,
  change,
  errors,
}: Pick<ReturnType<typeof usePail>, "rows" | "form" | "change"> & {
  readonly errors: readonly DeskError[];
}) {
  return (
    <>
      {rows.map(({ part, path, label, tool }) => {
        const error = errors.find((found) => found.path.startsWith(`${SHAPE}.${path}`));
        const unit: Unit = form[tool];
        return (
          <TextField
            key={part}
            id={part}
            label={say(label)}
            unit={unit}
            text={form[part]}
            fault={error === undefined ? undefined : errorSentence(error)}
            onText={(text) => {
              change({ [part]: text });
            }}
          />
        );
      })}
    </>
  );
}

function Doubted({ doubt, gate }: { readonly doubt: Doubt; readonly gate: Gate }) {
  const { name } = fieldFromPath(doubt.path);
  return (
    <DoubtQuestion
      sentence={doubtSentence(doubt)}
      again={say("doubt.change", { field: name })}
      keep={say("doubt.keep", { value: write(doubt.got) })}
      onAgain={gate.again}
      onKeep={gate.keep}
    />
  );
}

export function PailScreen(props: PailProps) {
  const { machine } = props;
  const { form, change, rows, gate } = usePail(props);
  const id = machine.machine;
  const frame = {
    title: say("print.pail_title"),
    place: machine.body.machine.name,
    onBack: () => {
      back("machines", id, "print");
    },
  };
  if (gate.doubt !== null)
    return (
      <Page {...frame}>
        <Doubted doubt={gate.doubt} gate={gate} />
      </Page>
    );
  const isPlaced = ({ path }: DeskError): boolean =>
    rows.some((row) => path.startsWith(`${SHAPE}.${row.path}`));
  const loose = gate.errors.filter((error) => !isPlaced(error));
  const action = (
    <MainAction onPress={gate.pass} about={JSON.stringify(form)}>
      {say("go_on")}
    </MainAction>
  );
  return (
    <Page {...frame} action={action}>
      <Hint id="hint" hint={say("print.pail_hint")} why={say("print.pail_why")} />
      {loose.map((error) => (
        <Fault key={error.path}>{errorSentence(error, looseName(error))}</Fault>
      ))}
      <ChoicePart
        name="pail-kind"
        title={say("print.pail_by")}
        options={KINDS}
        chosen={form.kind}
        onChoose={(kind) => {
          change({ kind });
        }}
      />
      <Rows rows={rows} form={form} change={change} errors={gate.errors} />
      <CoreTrouble />
    </Page>
  );
}

/** What is about the bucket as a whole has no row of its own. */
function looseName({ path }: DeskError): string {
  return path.startsWith(SHAPE) ? fieldById("pail_shape").name : fieldFromPath(path).name;
}

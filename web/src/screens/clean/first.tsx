// Last page: first reading and first-fill pH, then everything goes into the log.
import { useState } from "preact/hooks";
import type { AssessSumpBody } from "../../core/messages";
import { MainAction } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { TextField } from "../../elements/fields/textfield";
import { changeCleaning, type Cleaning } from "../../store/underway/cleaning";
import type { MachineEntry } from "../../store/log/entry";
import { readingUnit } from "../../store/underway/walk";
import { errorSentence } from "../../words/errors";
import { write } from "../../words/numbers";
import { say } from "../../words/say";
import { NotSaved } from "../check/notsaved";
import { useAnswer, useCore } from "../core";
import { back, replace } from "../route";
import { chargeRecipe, chargeRows, useCharge } from "./charge";
import { faultFor, type Faults } from "./reading";
import { typedOf, useSavingClean } from "./saving";
import { lastStep } from "./steps";

function bodyOf(machine: MachineEntry, cleaning: Cleaning): AssessSumpBody | null {
  const { sump, fluid, target, units, instrument } = machine.body.machine;
  const shows = typedOf(cleaning.texts["reading"], readingUnit(machine.body.machine));
  if (shows === undefined) return null;
  const glass = instrument === undefined ? {} : { instrument };
  return { sump, fluid, target, units, ...glass, reading: { shows } };
}

interface FirstProps {
  readonly machine: MachineEntry;
  readonly cleaning: Cleaning;
}

function Field({
  machine,
  cleaning,
  name,
  label,
  unit,
  fault,
}: FirstProps & {
  readonly name: string;
  readonly label: string;
  readonly unit: string;
  readonly fault: string | undefined;
}) {
  return (
    <TextField
      id={`clean-${name}`}
      label={label}
      unit={unit}
      text={cleaning.texts[name] ?? ""}
      fault={fault}
      onText={(text) => {
        changeCleaning(machine.machine, { texts: { ...cleaning.texts, [name]: text } });
      }}
    />
  );
}

/** Both numbers are read before anything is stored; each may stay empty. */
function useFirst({ machine, cleaning }: FirstProps) {
  const core = useCore();
  const id = machine.machine;
  const body = bodyOf(machine, cleaning);
  const found = useAnswer("assess_sump", body);
  const recipe = chargeRecipe(useCharge(machine.body.machine, cleaning));
  const [phFaults, setPhFaults] = useState<Faults>({});
  const { saving, finish } = useSavingClean(machine, () => {
    replace("machines", id, "clean-out", "done");
  });
  const isBusy = saving.kind === "saving" || (recipe === null && !cleaning.otherWay);
  const press = async (): Promise<void> => {
    // Without the recipe nobody knows what the buckets held: nothing is stored of them then.
    if (isBusy) return;
    const text = cleaning.texts["ph"] ?? "";
    if (text.trim() !== "") {
      const read = await core.ask("read_quantity", { text, unit: "1", quantity: "ph" });
      const said = read.kind === "error" ? errorSentence(read.error, say("field.ph")) : "";
      setPhFaults(said === "" ? {} : { ph: { text, said } });
      if (read.kind !== "ok") return;
    }
    if (body !== null && found?.kind !== "ok") return;
    const rows = chargeRows(machine.body.machine, cleaning, recipe);
    finish(cleaning, rows, found?.kind === "ok" ? found.result : null);
  };
  const phFault = faultFor(phFaults, "ph", cleaning.texts["ph"] ?? "");
  return { found, phFault, saving, isBusy, press };
}

export function FirstScreen(props: FirstProps) {
  const { machine, cleaning } = props;
  const { found, phFault, saving, isBusy, press } = useFirst(props);
  const id = machine.machine;
  const unit = readingUnit(machine.body.machine);
  const strength = found?.kind === "ok" ? found.result.strength?.shown.strength : undefined;
  const fault = found?.kind === "error" ? errorSentence(found.error) : undefined;
  const label = say("clean.first_reading", { unit });
  return (
    <Page
      title={say("clean.title_first")}
      place={machine.body.machine.name}
      step={lastStep()}
      onBack={() => {
        back("machines", id);
      }}
      action={
        <>
          <NotSaved saving={saving} />
          <MainAction
            busy={isBusy}
            about={JSON.stringify(cleaning.texts)}
            onPress={() => void press()}
          >
            {say(saving.kind === "saving" ? "save.saving" : "clean.save")}
          </MainAction>
        </>
      }
    >
      <p>{say("clean.first_text")}</p>
      <Field {...props} name="reading" label={label} unit={unit} fault={fault} />
      {strength === undefined ? null : (
        <p role="status">{say("clean.first_found", { strength: write(strength) })}</p>
      )}
      <Field {...props} name="ph" label={say("clean.first_ph")} unit="1" fault={phFault} />
      <button
        type="button"
        class="place-link quiet-button"
        onClick={() => {
          changeCleaning(id, { ticks: cleaning.ticks.slice(0, -1) });
        }}
      >
        {say("clean.undo")}
      </button>
    </Page>
  );
}

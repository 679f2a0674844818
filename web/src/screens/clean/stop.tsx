// Stopping early: what was reached goes into the log, and that it is not finished.
import { MainAction, OtherAction } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { TextField } from "../../elements/fields/textfield";
import { changeCleaning, endCleaning, type Cleaning } from "../../store/underway/cleaning";
import type { MachineEntry } from "../../store/log/entry";
import { say } from "../../words/say";
import { writeMoment } from "../../words/times";
import { NotSaved } from "../check/notsaved";
import { back, replace } from "../route";
import { chargeRecipe, chargeRows, useCharge } from "./charge";
import { useSavingClean } from "./saving";
import { reached } from "./steps";

interface StopProps {
  readonly machine: MachineEntry;
  readonly cleaning: Cleaning;
}

function Reached({ machine, cleaning }: StopProps) {
  const states = reached(cleaning.ticks);
  if (states.length === 0) return <p>{say("clean.stop_none")}</p>;
  return (
    <>
      <p>{say("clean.stop_text")}</p>
      <ul class="facts">
        {states.map(({ state, at }) => (
          <li key={state}>
            {say(`clean.tick_${state}`)}, {writeMoment(at)}
          </li>
        ))}
      </ul>
      <TextField
        id="clean-remarks"
        label={say("clean.stop_why")}
        number={false}
        text={cleaning.texts["remarks"] ?? ""}
        onText={(text) => {
          changeCleaning(machine.machine, { texts: { ...cleaning.texts, remarks: text } });
        }}
      />
    </>
  );
}

/** Where nothing was done there is nothing to log. */
function Drop({ id }: { readonly id: string }) {
  return (
    <MainAction
      onPress={() => {
        replace("machines", id);
        endCleaning(id);
      }}
    >
      {say("clean.stop_drop")}
    </MainAction>
  );
}

function Keep({ machine, cleaning }: StopProps) {
  const id = machine.machine;
  const recipe = chargeRecipe(useCharge(machine.body.machine, cleaning));
  const { saving, stop } = useSavingClean(machine, () => {
    replace("machines", id, "told", cleaning.id);
  });
  const isWaiting = cleaning.buckets.length > 0 && recipe === null && !cleaning.otherWay;
  return (
    <>
      <NotSaved saving={saving} />
      <MainAction
        busy={saving.kind === "saving" || isWaiting}
        onPress={() => {
          if (!isWaiting) stop(cleaning, chargeRows(machine.body.machine, cleaning, recipe));
        }}
      >
        {say(saving.kind === "saving" ? "save.saving" : "clean.stop_do")}
      </MainAction>
    </>
  );
}

export function StopScreen({ machine, cleaning }: StopProps) {
  const id = machine.machine;
  const goOn = (): void => {
    back("machines", id, "clean-out");
  };
  return (
    <Page
      title={say("clean.stop_title")}
      place={machine.body.machine.name}
      onBack={goOn}
      action={
        <>
          <OtherAction onPress={goOn}>{say("clean.stop_back")}</OtherAction>
          {reached(cleaning.ticks).length === 0 ? (
            <Drop id={id} />
          ) : (
            <Keep machine={machine} cleaning={cleaning} />
          )}
        </>
      }
    >
      <Reached machine={machine} cleaning={cleaning} />
    </Page>
  );
}

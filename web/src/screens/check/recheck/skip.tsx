// No second reading: a true answer, with a reason if somebody wants to give one. The log says so.
import { useState } from "preact/hooks";
import { MainAction } from "../../../elements/buttons";
import { Page } from "../../../elements/page";
import { TextField } from "../../../elements/fields/textfield";
import type { MachineEntry, PourEntry } from "../../../store/log/entry";
import { say } from "../../../words/say";
import { back } from "../../route";
import { NotSaved } from "../notsaved";
import { useSavingAgain } from "./saving";
import { draftOf } from "./screen";

export function SkipScreen({
  machine,
  pour,
}: {
  readonly machine: MachineEntry;
  readonly pour: PourEntry;
}) {
  const [reason, setReason] = useState("");
  const id = machine.machine;
  const { saving, press } = useSavingAgain(id, draftOf(id), null);
  const told = {
    body: {
      machine: machine.body.machine,
      of: pour.id,
      ...(reason.trim() === "" ? {} : { remarks: reason.trim() }),
    },
    shown: { assessment: { notes: [] } },
  };
  return (
    <Page
      title={say("recheck.skip_title")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", id);
      }}
      action={
        <>
          <NotSaved saving={saving} />
          <MainAction
            busy={saving.kind === "saving"}
            onPress={() => {
              press(told);
            }}
          >
            {say("recheck.skip_do")}
          </MainAction>
        </>
      }
    >
      <p>{say("recheck.skip_text")}</p>
      <TextField
        id="reason"
        number={false}
        label={say("recheck.skip_reason")}
        text={reason}
        onText={setReason}
      />
    </Page>
  );
}

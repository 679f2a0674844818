// The frame of every page on which something is told.
import type { ComponentChildren } from "preact";
import { MainAction } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { TextField } from "../../elements/fields/textfield";
import type { MachineEntry } from "../../store/log/entry";
import { say, type Key } from "../../words/say";
import { NotSaved, saveWord } from "../check/notsaved";
import { back } from "../route";
import type { Said, Telling } from "./telling";

interface ToldFormProps {
  readonly title: Key;
  /** Below the machine: where Back leads when nothing came before. */
  readonly parent?: readonly string[];
  readonly machine: MachineEntry | null;
  readonly telling: Telling;
  /** Who says so, where the page asks for it. */
  readonly by?: string;
  /** A second entry that the same press makes. */
  readonly also?: Said | undefined;
  /** Null while something is missing; then `onMissing` says what. */
  readonly said: Said | null;
  readonly onMissing?: () => void;
  readonly children: ComponentChildren;
}

export function ToldForm(props: ToldFormProps) {
  const { title, machine, telling, said, by = "", also, onMissing, children } = props;
  const { parent = ["tell"] } = props;
  return (
    <Page
      title={say(title)}
      place={machine?.body.machine.name}
      onBack={() => {
        back(...(machine === null ? ["handover"] : ["machines", machine.machine, ...parent]));
      }}
      action={
        <MainAction
          busy={telling.saving.kind === "saving"}
          about={JSON.stringify([said, by, also])}
          onPress={() => {
            if (said === null) onMissing?.();
            else telling.press(said, { by, also });
          }}
        >
          {saveWord(telling.saving)}
        </MainAction>
      }
    >
      <NotSaved saving={telling.saving} />
      <div class="told-form">{children}</div>
    </Page>
  );
}

export function RemarksField({ telling }: { readonly telling: Telling }) {
  return (
    <TextField
      id="told-remarks"
      label={say("told.remarks")}
      number={false}
      text={telling.text("remarks")}
      onText={(text) => {
        telling.change("remarks", text);
      }}
    />
  );
}

/** The field for the body: left out where nothing was written. */
export function remarksOf(telling: Telling): { readonly remarks?: string } {
  const remarks = telling.text("remarks").trim();
  return remarks === "" ? {} : { remarks };
}

// What stands in the log now, and the way back to the list.
import type { ComponentChildren } from "preact";
import { MainAction } from "../../elements/buttons";
import { Page } from "../../elements/page";
import type { MachineEntry } from "../../store/log/entry";
import { say } from "../../words/say";
import { replace } from "../route";

interface SavedPageProps {
  readonly machine: MachineEntry;
  readonly children: ComponentChildren;
}

export function SavedPage({ machine, children }: SavedPageProps) {
  const toList = (): void => {
    replace();
  };
  return (
    <Page
      title={say("saved.title")}
      place={machine.body.machine.name}
      onBack={toList}
      stays
      action={
        <MainAction rests onPress={toList}>
          {say("saved.done")}
        </MainAction>
      }
    >
      {children}
    </Page>
  );
}

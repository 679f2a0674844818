// A check at a machine on hold: the tag first, then a plain choice. The app advises, it locks nobody out.
import { MainAction, OtherAction } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { goOnDespite } from "../../store/written/despite";
import type { MachineEntry, StateEntry } from "../../store/log/entry";
import { say } from "../../words/say";
import { back } from "../route";
import { TagFacts } from "../told/stated";

export function HeldScreen({
  machine,
  held,
}: {
  readonly machine: MachineEntry;
  readonly held: StateEntry;
}) {
  const id = machine.machine;
  const isTag = held.body.state === "on_hold";
  const leave = (): void => {
    back("machines", id);
  };
  return (
    <Page
      title={say(isTag ? "tag.title" : "tag.stopped_title")}
      place={machine.body.machine.name}
      onBack={leave}
      action={
        <>
          <OtherAction
            onPress={() => {
              goOnDespite(id);
            }}
          >
            {say("tag.all_the_same")}
          </OtherAction>
          <MainAction onPress={leave}>{say("tag.leave")}</MainAction>
        </>
      }
    >
      <section class="stated">
        <TagFacts stated={held} />
      </section>
      <p class="plain-lead">{say(isTag ? "tag.ask" : "tag.ask_stopped")}</p>
      <p class="note">{say("tag.advice")}</p>
    </Page>
  );
}

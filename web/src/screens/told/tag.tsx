// The hold tag of a machine: hung with a reason, a name and a time; taken off with a name.
import { useState } from "preact/hooks";
import { Fault } from "../../elements/fault";
import type { MachineEntry } from "../../store/log/entry";
import { statedOf } from "../../store/log/machines";
import { say } from "../../words/say";
import { RemarksField, remarksOf, ToldForm } from "./form";
import { ReasonField, reasonOf, StateField } from "./state";
import { TagFacts } from "./stated";
import { isUntilMissing, NameField, nameOf, UntilField, untilOf } from "./tagfields";
import { useTelling } from "./telling";

interface TagProps {
  readonly machine: MachineEntry;
}

export function TellHold({ machine }: TagProps) {
  const telling = useTelling(machine.machine, "hold");
  const [asked, setAsked] = useState(false);
  const reason = reasonOf(telling);
  const by = nameOf(telling);
  const isWhole = reason !== undefined && by !== "" && !isUntilMissing(telling);
  const body = {
    state: "on_hold" as const,
    ...(reason === undefined ? {} : { reason }),
    ...untilOf(telling),
    ...remarksOf(telling),
  };
  return (
    <ToldForm
      title="tag.set_title"
      machine={machine}
      telling={telling}
      by={by}
      said={isWhole ? { kind: "machine_state", body } : null}
      onMissing={() => {
        setAsked(true);
      }}
    >
      <p>{say("tag.set_text")}</p>
      {asked && reason === undefined ? <Fault>{say("tag.reason_missing")}</Fault> : null}
      <ReasonField telling={telling} />
      <UntilField telling={telling} asked={asked} />
      <NameField telling={telling} fault={asked && by === ""} />
      <RemarksField telling={telling} />
    </ToldForm>
  );
}

/** What a machine is after its tag; at rest it may go on resting. */
const AFTER = ["in_use", "watch", "shutdown"] as const;

export function TellOff({ machine }: TagProps) {
  const telling = useTelling(machine.machine, "off");
  const [asked, setAsked] = useState(false);
  const stated = statedOf(machine.machine);
  const by = nameOf(telling);
  const state = AFTER.find((one) => one === telling.text("state")) ?? "in_use";
  return (
    <ToldForm
      title="tag.off_title"
      machine={machine}
      telling={telling}
      by={by}
      said={by === "" ? null : { kind: "machine_state", body: { state, ...remarksOf(telling) } }}
      onMissing={() => {
        setAsked(true);
      }}
    >
      {stated === undefined ? null : (
        <section class="stated">
          <TagFacts stated={stated} />
        </section>
      )}
      <p>{say("tag.off_text")}</p>
      <StateField title="tag.off_then" states={AFTER} chosen={state} telling={telling} />
      <NameField telling={telling} fault={asked && by === ""} />
      <RemarksField telling={telling} />
    </ToldForm>
  );
}

// How a machine is used: in use, to be watched, stopped, or at rest. Its checks rest while it does.
import { Choice } from "../../elements/choice";
import { Select } from "../../elements/select";
import type { MachineStateContent } from "../../core/messages";
import type { MachineEntry } from "../../store/entry";
import { statedOf } from "../../store/journal";
import { isAtRest } from "../../store/told";
import { shiftStateWord, stopReasonWord } from "../../words/codes";
import { say, startLarge } from "../../words/say";
import { writeMoment } from "../../words/times";
import { RemarksField, remarksOf, ToldForm } from "./form";
import { useTelling } from "./telling";

const STATES = ["in_use", "watch", "stopped", "clean_out", "out_of_service", "shutdown"] as const;
const REASONS = [
  "wrong_drum",
  "split",
  "smell",
  "leak",
  "water_getting_in",
  "overfilled",
  "ran_dry",
  "lumpy_mix",
  "cleaner_in_it",
  "hydraulic_oil",
  "lab_sample",
  "dose_in_progress",
  "holiday",
  "repair",
  "other",
] as const satisfies readonly NonNullable<MachineStateContent["reason"]>[];

export function TellState({ machine }: { readonly machine: MachineEntry }) {
  const telling = useTelling(machine.machine, "state");
  const now = statedOf(machine.machine)?.body.state ?? "in_use";
  const state = STATES.find((one) => one === telling.text("state")) ?? now;
  const reason = REASONS.find((one) => one === telling.text("reason"));
  const why = state === "in_use" || reason === undefined ? {} : { reason };
  return (
    <ToldForm
      title="tell.state"
      machine={machine}
      telling={telling}
      said={{ kind: "machine_state", body: { state, ...why, ...remarksOf(telling) } }}
    >
      <h2 id="told-state">{say("tell.state_now")}</h2>
      <Choice
        name="state"
        labelledBy="told-state"
        options={STATES.map((value) => ({
          value,
          word: startLarge(shiftStateWord(value)),
          note: say(`tell.about_${value}`),
        }))}
        chosen={state}
        onChoose={(value) => {
          telling.change("state", value);
        }}
      />
      {state === "in_use" ? null : (
        <Select
          id="told-reason"
          label={say("tell.reason")}
          value={reason ?? "none"}
          options={[
            { value: "none" as const, word: say("tell.no_reason") },
            ...REASONS.map((value) => ({ value, word: startLarge(stopReasonWord(value)) })),
          ]}
          onChoose={(value) => {
            telling.change("reason", value);
          }}
        />
      )}
      <RemarksField telling={telling} />
    </ToldForm>
  );
}

/** Loud on the machine's page: what is stopped gets nothing poured in. */
export function Stated({ machine }: { readonly machine: MachineEntry }) {
  const stated = statedOf(machine.machine);
  if (stated === undefined) return null;
  const { state, reason, remarks } = stated.body;
  const why = reason === undefined ? "" : startLarge(stopReasonWord(reason));
  return (
    <section class="stated" role="status">
      <strong>{startLarge(shiftStateWord(state))}</strong>
      {why === "" ? null : <span>{why}</span>}
      {remarks === undefined ? null : <span>{remarks}</span>}
      {state === "stopped" ? <span>{say("tell.do_not_pour")}</span> : null}
      {isAtRest(stated.body) ? <span>{say("tell.checks_rest")}</span> : null}
      <span class="note">{say("tell.since", { time: writeMoment(stated.measured_at) })}</span>
    </section>
  );
}

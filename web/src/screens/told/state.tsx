// How a machine is used: in use, to be watched, stopped, or at rest. Its checks rest while it does.
import { Choice } from "../../elements/fields/choice";
import { Select } from "../../elements/fields/select";
import type { MachineStateContent } from "../../core/messages";
import type { MachineEntry } from "../../store/log/entry";
import { statedOf } from "../../store/log/machines";
import { shiftStateWord, stopReasonWord } from "../../words/codes";
import { say, startLarge, type Key } from "../../words/say";
import { RemarksField, remarksOf, ToldForm } from "./form";
import { Standing } from "./standing";
import { NameField, nameOf, UntilField, untilOf } from "./tagfields";
import { useTelling, type Telling } from "./telling";

export const STATES = [
  "in_use",
  "watch",
  "on_hold",
  "stopped",
  "clean_out",
  "out_of_service",
  "shutdown",
] as const;
export const REASONS = [
  "wrong_drum",
  "split",
  "smell",
  "leak",
  "water_getting_in",
  "overfilled",
  "ran_dry",
  "lumpy_mix",
  "neat_concentrate",
  "cleaner_in_it",
  "hydraulic_oil",
  "lab_sample",
  "dose_in_progress",
  "holiday",
  "repair",
  "other",
] as const satisfies readonly NonNullable<MachineStateContent["reason"]>[];

/** Why the machine does not simply run. */
export function reasonOf(telling: Telling): (typeof REASONS)[number] | undefined {
  return REASONS.find((one) => one === telling.text("reason"));
}

export function ReasonField({ telling }: { readonly telling: Telling }) {
  return (
    <Select
      id="told-reason"
      label={say("tell.reason")}
      value={reasonOf(telling) ?? "none"}
      options={[
        { value: "none" as const, word: say("tell.no_reason") },
        ...REASONS.map((value) => ({ value, word: startLarge(stopReasonWord(value)) })),
      ]}
      onChoose={(value) => {
        telling.change("reason", value);
      }}
    />
  );
}

type State = (typeof STATES)[number];

export function StateField<S extends State>({
  title,
  states,
  chosen,
  telling,
}: {
  readonly title: Key;
  readonly states: readonly S[];
  readonly chosen: S;
  readonly telling: Telling;
}) {
  return (
    <>
      <h2 id="told-state">{say(title)}</h2>
      <Choice
        name="state"
        labelledBy="told-state"
        options={states.map((value) => ({
          value,
          word: startLarge(shiftStateWord(value)),
          note: say(`tell.about_${value satisfies State}`),
        }))}
        chosen={chosen}
        onChoose={(value) => {
          telling.change("state", value);
        }}
      />
    </>
  );
}

export function TellState({ machine }: { readonly machine: MachineEntry }) {
  const telling = useTelling(machine.machine, "state");
  const now = statedOf(machine.machine)?.body.state ?? "in_use";
  const state = STATES.find((one) => one === telling.text("state")) ?? now;
  const reason = reasonOf(telling);
  const until = state === "on_hold" ? untilOf(telling) : {};
  const why = state === "in_use" || reason === undefined ? {} : { reason };
  return (
    <ToldForm
      title="tell.state"
      machine={machine}
      telling={telling}
      by={nameOf(telling)}
      said={{
        kind: "machine_state",
        body: { state, ...why, ...until, ...remarksOf(telling) },
      }}
    >
      <StateField title="tell.state_now" states={STATES} chosen={state} telling={telling} />
      <Standing now={now} chosen={state} />
      {state === "in_use" ? null : <ReasonField telling={telling} />}
      {state === "on_hold" ? <UntilField telling={telling} /> : null}
      <NameField telling={telling} />
      <RemarksField telling={telling} />
    </ToldForm>
  );
}

// What can be told of a machine without a check; and the page that says that it is stored.
import { useEffect } from "preact/hooks";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import type { MachineEntry } from "../../store/log/entry";
import { entryById, load } from "../../store/log/journal";
import { heldOf } from "../../store/log/machines";
import { isToldKind } from "../../store/written/told";
import { say } from "../../words/say";
import { writeMoment } from "../../words/times";
import { address, back, replace } from "../route";
import { TellAdditive, TellNote, TellUnknown } from "./others";
import { TellPour } from "./pour";
import { toldText } from "./sentence";
import { Stated } from "./stated";
import { TellState } from "./state";
import { TellHold, TellOff } from "./tag";

const PAGES = {
  pour: TellPour,
  unknown: TellUnknown,
  additive: TellAdditive,
  note: TellNote,
  hold: TellHold,
  off: TellOff,
  state: TellState,
} as const;
type What = keyof typeof PAGES;
const WHATS: readonly Exclude<What, "off">[] = [
  "pour",
  "unknown",
  "additive",
  "note",
  "hold",
  "state",
];

export function TellScreen({
  machine,
  what,
}: {
  readonly machine: MachineEntry;
  readonly what: string | undefined;
}) {
  const chosen = what === "off" ? what : WHATS.find((one) => one === what);
  if (chosen !== undefined) {
    const Chosen = PAGES[chosen];
    return <Chosen key={machine.machine} machine={machine} />;
  }
  return (
    <Page
      title={say("tell.title")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", machine.machine);
      }}
    >
      <p>{say("tell.text")}</p>
      <ul class="machine-list">
        {WHATS.map((one) => (
          <li key={one}>
            <a class="machine-row" href={address("machines", machine.machine, "tell", one)}>
              <span class="machine-name">{say(`tell.${one}`)}</span>
              <span class="note">{say(`tell.${one}_note`)}</span>
            </a>
          </li>
        ))}
      </ul>
    </Page>
  );
}

const isAddition = (kind: string): boolean => kind === "pour" || kind === "unknown_addition";

/** Reached only when the store has answered and the stored text was read back. */
export function ToldScreen({
  machine,
  id,
}: {
  readonly machine: MachineEntry | null;
  readonly id: string;
}) {
  const entry = entryById(id);
  const isMissing = load.value.kind === "ready" && (entry === undefined || !isToldKind(entry.kind));
  useEffect(() => {
    if (isMissing) replace();
  }, [isMissing]);
  if (entry === undefined || entry.kind === "machine" || entry.kind === "check") return null;
  // Where nothing may run, nothing mixes.
  const isStopped = machine !== null && heldOf(machine.machine) !== undefined;
  const onward = (): void => {
    replace(...(machine === null ? ["handover"] : ["machines", machine.machine]));
  };
  return (
    <Page
      title={say("saved.title")}
      place={machine?.body.machine.name}
      onBack={onward}
      action={
        <MainAction rests onPress={onward}>
          {say("tell.done")}
        </MainAction>
      }
    >
      <p role="status">{writeMoment(entry.measured_at)}</p>
      <p class="saved-next">{toldText(entry)}</p>
      {machine === null || entry.kind === "machine_state" ? null : <Stated machine={machine} />}
      {isAddition(entry.kind) && !isStopped ? <p>{say("tell.read_again")}</p> : null}
      <PlaceLink to={address("log", entry.id)}>{say("saved.entry")}</PlaceLink>
    </Page>
  );
}

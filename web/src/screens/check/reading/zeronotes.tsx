// What is wrong with the instrument's zero, with its cure: wipe, zero, and say so without leaving the check.
import { PlaceLink } from "../../../elements/buttons";
import type { MachineEntry } from "../../../store/log/entry";
import { noteSentence } from "../../../words/codes";
import { say } from "../../../words/say";
import { address } from "../../route";
import { ENTER } from "../../setup/enter";

const CODES: readonly string[] = ["zero_old", "zero_age_unknown", "zero_not_taken"];

interface ZeroNotesProps {
  readonly machine: MachineEntry;
  readonly notes: readonly string[];
  readonly from: "reading" | "answers";
}

export function ZeroNotes({ machine, notes, from }: ZeroNotesProps) {
  const said = notes.filter((note) => CODES.includes(note));
  if (said.length === 0) return null;
  const id = machine.machine;
  // A zero that stands with the fluid belongs to an instrument that nobody wrote down.
  const isKnown = machine.body.machine.instrument !== undefined;
  return (
    <div class="zero-notes">
      {said.map((note) => (
        <p key={note}>{noteSentence(note)}</p>
      ))}
      {isKnown ? (
        <PlaceLink to={address("machines", id, "zero", "change", from)}>
          {say("reading.zero_now")}
        </PlaceLink>
      ) : (
        <PlaceLink to={address("machines", id, "set-up", "instrument", ENTER)}>
          {say("reading.instrument")}
        </PlaceLink>
      )}
    </div>
  );
}

// What is wrong with the instrument's zero, with its cure: wipe, zero, and write the new one down.
import { PlaceLink } from "../../elements/buttons";
import { noteSentence } from "../../words/codes";
import { say } from "../../words/say";
import { address } from "../route";

const CODES: readonly string[] = ["zero_old", "zero_age_unknown", "zero_not_taken"];

export function ZeroNotes({
  id,
  notes,
}: {
  readonly id: string;
  readonly notes: readonly string[];
}) {
  const said = notes.filter((note) => CODES.includes(note));
  if (said.length === 0) return null;
  return (
    <div class="zero-notes">
      {said.map((note) => (
        <p key={note}>{noteSentence(note)}</p>
      ))}
      <PlaceLink to={address("machines", id, "set-up", "zero", "change")}>
        {say("reading.zero_now")}
      </PlaceLink>
    </div>
  );
}

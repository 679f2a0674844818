// What to know about dip, reading and fluid, and what would make the numbers surer.
import type { AssessSumpResult } from "../../core/messages";
import { cureSentence, noteSentence } from "../../words/codes";

/** Without what is wrong with the zero: that stands with its cure in `ZeroNotes`. */
export function Notes({ result }: { readonly result: AssessSumpResult | null }) {
  const notes = (result?.notes ?? []).filter((note) => !note.startsWith("zero_"));
  const cures = result?.strength?.cures ?? [];
  return [...notes.map(noteSentence), ...cures.map(cureSentence)].map((text) => (
    <p key={text} class="note">
      {text}
    </p>
  ));
}

// Top-ups from the log on the page of the pour test: what was really poured is all that is still missing.
import type { DeskError } from "../../../core/messages";
import { TextField } from "../../../elements/fields/textfield";
import { countedPairs, type PourPair } from "../../../store/underway/pours";
import { errorSentence } from "../../../words/errors";
import { fieldById } from "../../../words/fields";
import { writeTyped } from "../../../words/numbers";
import { say, sayCount } from "../../../words/say";
import { writeClock, writeMoment } from "../../../words/times";
import type { Form } from "../form";
import type { Test } from "./pourtest";
import { toppedUp, type ToppedUp } from "./toppedup";

function withPoured(pairs: readonly PourPair[], top: ToppedUp, poured: string) {
  const { id, before, after } = top;
  const others = pairs.filter((pair) => pair.id !== id);
  return poured.trim() === "" ? others : [...others, { id, before, after, poured }];
}

/** The row is the one that the sentence stands at. */
function nameOf({ path }: DeskError): string {
  return fieldById(path.replace(/^body\.pairs\[\d+\]/, "pairs")).name;
}

/** What belongs to no field of this page is told below the steps. */
function faultAt(pairs: readonly PourPair[], id: string, error: DeskError | null) {
  const row = countedPairs(pairs).findIndex((pair) => pair.id === id);
  const isHere = row >= 0 && error?.path.startsWith(`body.pairs[${row}]`) === true;
  if (!isHere) return undefined;
  return error.code === "not_rising"
    ? say("pairs.not_rising")
    : errorSentence(error, nameOf(error));
}

/** Buckets that were ticked count more than those that a recipe named. */
function saidOf({ buckets, poured }: ToppedUp): string {
  if (poured > 0) return sayCount("pairs.ticked", poured);
  return buckets === 0 ? "" : sayCount("pairs.recipe", buckets);
}

interface PourPairsProps {
  readonly form: Form;
  readonly of: Test;
  readonly error: DeskError | null;
}

export function PourPairs({ form, of: { test, put }, error }: PourPairsProps) {
  const tops = form.readAs === "depth" ? toppedUp(form) : [];
  if (tops.length === 0) return null;
  return (
    <section class="pour-pairs">
      <h2>{say("pairs.title")}</h2>
      <p class="note">{say("pairs.hint")}</p>
      {tops.map((top) => {
        const said = saidOf(top);
        const dips = { before: writeTyped(top.before), after: writeTyped(top.after) };
        return (
          <TextField
            key={top.id}
            id={`pair-${top.id}`}
            label={say("pairs.poured", { from: writeMoment(top.from), to: writeClock(top.to) })}
            hint={`${say("pairs.dips", dips)} ${said}`.trim()}
            unit={test.units.pail}
            text={test.pairs.find(({ id }) => id === top.id)?.poured ?? ""}
            fault={faultAt(test.pairs, top.id, error)}
            onText={(poured) => {
              put({ pairs: withPoured(test.pairs, top, poured) });
            }}
          />
        );
      })}
    </section>
  );
}

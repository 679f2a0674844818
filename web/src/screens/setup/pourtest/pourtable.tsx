// What the pours tell so far: stairs and curve, litres with their uncertainty, and what is missing.
import type { CalibrateSumpResult } from "../../../core/messages";
import { OtherAction } from "../../../elements/buttons";
import { Stairs } from "../../../elements/drawings/stairs";
import { noteSentence } from "../../../words/codes";
import { write } from "../../../words/numbers";
import { say, sayCount } from "../../../words/say";

/** Fewer steps leave the table rough: pycore's own bound, which its note names. */
const LEAST = 4;
/** A table of forty rows is for the calculator; a person looks at every fourth. */
const EVERY = 4;

function missingOf(count: number, result: CalibrateSumpResult | null): readonly string[] {
  const steps = count < LEAST ? [sayCount("pours.missing_steps", LEAST - count)] : [];
  const isNear = result !== null && !result.notes.includes("not_near_full");
  const gaps = (result?.gaps ?? []).map(({ from_depth, to_depth }) =>
    say("pours.gap", { from: write(from_depth), to: write(to_depth) }),
  );
  return [...steps, ...(isNear ? [] : [say("pours.missing_full")]), ...gaps];
}

function findingsOf({ shown, notes }: CalibrateSumpResult): readonly string[] {
  const { rest, rest_u, maker_volume, maker_difference } = shown;
  const full = { volume: write(shown.full_volume), u: write(shown.full_volume_u) };
  const differs = notes.includes("maker_differs");
  return [
    say("pours.full", full),
    say("preview.one", { one: write(shown.one), holds: write(shown.one_holds) }),
    ...(rest === undefined || rest_u === undefined
      ? []
      : [say("pours.rest", { volume: write(rest), u: write(rest_u) })]),
    ...(maker_volume === undefined || maker_difference === undefined
      ? []
      : [
          say(differs ? "pours.maker_differs" : "pours.maker_fits", {
            volume: write(maker_volume),
            difference: write(maker_difference),
          }),
        ]),
    ...(notes.includes("rest_estimated") ? [noteSentence("rest_estimated")] : []),
  ];
}

function Rows({ result }: { readonly result: CalibrateSumpResult }) {
  const last = result.rows.length - 1;
  const rows = result.rows.filter((_, i) => (i + 1) % EVERY === 0 || i === last);
  return (
    <table class="pour-table">
      <caption>{say("pours.table")}</caption>
      <thead>
        <tr>
          <th scope="col">{say("pours.depth")}</th>
          <th scope="col">{say("pours.volume")}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ depth_mm, poorly_known, shown }) => (
          <tr key={depth_mm}>
            <td>{write(shown.depth)}</td>
            <td>
              {say("pours.give_or_take", { volume: write(shown.volume), u: write(shown.volume_u) })}
              {poorly_known ? <span class="note"> {say("pours.poorly_known")}</span> : null}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface PourTableProps {
  readonly count: number;
  readonly result: CalibrateSumpResult | null;
  readonly onUse: () => void;
}

export function PourTable({ count, result, onUse }: PourTableProps) {
  const missing = missingOf(count, result);
  const { notes = [] } = result ?? {};
  const isDone = result !== null && count >= LEAST && !notes.includes("not_near_full");
  return (
    <section class="pour-result">
      <h2>{say("pours.so_far")}</h2>
      {result === null ? null : <Stairs result={result} name={say("pours.drawing")} />}
      <div role="status">
        <ul class="facts">
          {missing.map((text) => (
            <li key={text}>{text}</li>
          ))}
          {isDone ? <li>{say("pours.enough")}</li> : null}
        </ul>
      </div>
      {result === null ? null : (
        <>
          <ul class="facts">
            {findingsOf(result).map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
          {isDone ? <OtherAction onPress={onUse}>{say("pours.use")}</OtherAction> : null}
          <Rows result={result} />
          <p class="note">{say("pours.u_note")}</p>
        </>
      )}
    </section>
  );
}

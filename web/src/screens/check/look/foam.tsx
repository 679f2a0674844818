// Foam is a branch of its own: level, cleaner, strength, water, one question after the other. More
// concentrate and more soft water make it worse, so neither is tried first.
import type { JudgeLookResult } from "../../../core/messages";
import { OtherAction } from "../../../elements/buttons";
import { changeLook, FOAM_OPEN, lookOf, type Look } from "../../../store/underway/looks";
import { say } from "../../../words/say";
import { who } from "../../mishap/screen";

type Cause = JudgeLookResult["foam"][number];

/** Asked to the end: found, or nothing more to ask. */
function Asked({ id, isOpen }: { readonly id: string; readonly isOpen: boolean }) {
  return (
    <>
      {isOpen ? <p class="look-never">{say("look.foam_open", { who: who() })}</p> : null}
      <OtherAction
        onPress={() => {
          changeLook(id, FOAM_OPEN);
        }}
      >
        {say("look.foam_again")}
      </OtherAction>
    </>
  );
}

/** The next question; after the last one nothing was found, unless somebody could not tell. */
function onward({ foamNot, foamUnsure }: Look, isLast: boolean, isUnsure: boolean): Partial<Look> {
  const unsure = foamUnsure || isUnsure;
  return isLast && !unsure ? { foamFrom: "none" } : { foamNot: foamNot + 1, foamUnsure: unsure };
}

function Question({
  id,
  cause,
  total,
}: {
  readonly id: string;
  readonly cause: Cause;
  readonly total: number;
}) {
  const look = lookOf(id).value;
  const n = look.foamNot + 1;
  const answers: readonly { readonly word: string; readonly change: Partial<Look> }[] = [
    { word: say(`look_foam.${cause}.yes`), change: { foamFrom: cause } },
    { word: say(`look_foam.${cause}.no`), change: onward(look, n === total, false) },
    { word: say("look_foam.unsure"), change: onward(look, n === total, true) },
  ];
  return (
    <section class="task last-check">
      <p class="note">{say("look.foam_step", { n: String(n), total: String(total) })}</p>
      <h2>{say(`look_foam.${cause}`)}</h2>
      {answers.map(({ word, change }) => (
        <OtherAction
          key={word}
          onPress={() => {
            changeLook(id, change);
          }}
        >
          {word}
        </OtherAction>
      ))}
    </section>
  );
}

export function Foam({
  id,
  order,
}: {
  readonly id: string;
  readonly order: JudgeLookResult["foam"];
}) {
  const { foamNot, foamFrom } = lookOf(id).value;
  if (foamFrom !== "") return <Asked id={id} isOpen={false} />;
  const cause = order[foamNot];
  if (cause !== undefined) return <Question id={id} cause={cause} total={order.length} />;
  return order.length === 0 ? null : <Asked id={id} isOpen />;
}

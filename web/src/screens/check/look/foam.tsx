// Foam is a branch of its own: level, cleaner, strength, water, one question after the other. More
// concentrate and more soft water make it worse, so neither is tried first.
import type { JudgeLookResult } from "../../../core/messages";
import { OtherAction } from "../../../elements/buttons";
import { changeLook, lookOf } from "../../../store/underway/looks";
import { say } from "../../../words/say";

export function Foam({
  id,
  order,
}: {
  readonly id: string;
  readonly order: JudgeLookResult["foam"];
}) {
  const { foamNot, foamFrom } = lookOf(id).value;
  if (foamFrom !== "")
    return (
      <OtherAction
        onPress={() => {
          changeLook(id, { foamFrom: "", foamNot: 0 });
        }}
      >
        {say("look.foam_again")}
      </OtherAction>
    );
  const cause = order[Math.min(foamNot, order.length - 1)];
  if (cause === undefined) return null;
  const isLast = foamNot >= order.length - 1;
  return (
    <section class="task last-check">
      <p class="note">
        {say("look.foam_step", { n: String(foamNot + 1), total: String(order.length) })}
      </p>
      <h2>{say(`look_foam.${cause}`)}</h2>
      <OtherAction
        onPress={() => {
          changeLook(id, { foamFrom: cause });
        }}
      >
        {say(`look_foam.${cause}.yes`)}
      </OtherAction>
      <OtherAction
        onPress={() => {
          changeLook(id, isLast ? { foamFrom: "none" } : { foamNot: foamNot + 1 });
        }}
      >
        {say(`look_foam.${cause}.no`)}
      </OtherAction>
    </section>
  );
}

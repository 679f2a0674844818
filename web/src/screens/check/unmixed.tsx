// A check that is begun before the pump has mixed what was poured: its reading says little of the sump.
import { dueRecheck } from "../../store/log/deeds";
import { say } from "../../words/say";
import { now_ms, timeOf } from "../now";

/** Above a recipe: whoever doses by such a reading doses twice. */
export function UnmixedLine({ machine }: { readonly machine: string }) {
  const pour = dueRecheck(machine);
  const due = pour?.body.recheck_due_at;
  if (pour === undefined || due === undefined || Date.parse(due) <= now_ms.value) return null;
  return (
    <section class="cautions">
      <p>{say("recipe.unmixed", { time: timeOf(pour.measured_at), due: timeOf(due) })}</p>
    </section>
  );
}

// A machine that is going to stand, and one that stood: what coolant needs before and after.
import type { MachineStateContent } from "../../core/messages";
import { say, type Key } from "../../words/say";

type State = MachineStateContent["state"];

const STANDS: readonly State[] = ["shutdown", "out_of_service"];
const BEFORE: readonly Key[] = [
  "stand.before_1",
  "stand.before_2",
  "stand.before_3",
  "stand.before_4",
];
const AFTER: readonly Key[] = ["stand.after_1", "stand.after_2", "stand.after_3"];

function Lines({ title, keys }: { readonly title: Key; readonly keys: readonly Key[] }) {
  return (
    <section class="cautions" role="status">
      <h2>{say(title)}</h2>
      <ul>
        {keys.map((key) => (
          <li key={key}>{say(key)}</li>
        ))}
      </ul>
      <p class="note">{say("stand.source")}</p>
      <p>{say("recipe.sheet")}</p>
    </section>
  );
}

/** Between the state that it has and the one that is chosen. */
export function Standing({ now, chosen }: { readonly now: State; readonly chosen: State }) {
  if (STANDS.includes(chosen)) return <Lines title="stand.before" keys={BEFORE} />;
  return STANDS.includes(now) ? <Lines title="stand.after" keys={AFTER} /> : null;
}

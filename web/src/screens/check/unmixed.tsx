// A reading from before the pump has mixed what was poured: it says little of the sump.
import { unmixedAt } from "../../store/log/mixing";
import { say } from "../../words/say";
import { timeOf } from "../now";

interface UnmixedProps {
  readonly machine: string;
  /** When it was read; empty where nothing was. */
  readonly read_at: string;
  /** Of the reading in the log, where it stands there. */
  readonly place?: number;
}

/** Above a recipe: whoever doses by such a reading doses twice. It stays so, however late it is looked at. */
export function UnmixedLine({ machine, read_at, place }: UnmixedProps) {
  const mixing = read_at === "" ? null : unmixedAt(machine, read_at, place);
  if (mixing === null) return null;
  const { poured_at, due_at } = mixing;
  return (
    <section class="cautions">
      <p>{say("recipe.unmixed", { time: timeOf(poured_at), due: timeOf(due_at) })}</p>
    </section>
  );
}

// A newer check or a clean-out: the numbers of a recipe that was begun before it hold no longer, and the
// rest of its buckets would go into a sump that holds something else now.
import { isMeasured } from "../../../store/log/pinned";
import type { Entry } from "../../../store/log/entry";
import { recent, recentDeeds } from "../../../store/log/journal";
import { say } from "../../../words/say";
import { writeMoment } from "../../../words/times";
import { emptiedAt } from "../../clean/stopped";
import { pouringOf, type Pouring } from "../../../store/underway/pouring";

/** What ended a recipe, and when. */
type Newer = Pick<Entry, "kind" | "measured_at">;

function isNewer(entry: Entry): boolean {
  if (entry.kind === "clean_out") return entry.body.finished;
  return entry.kind === "check" && isMeasured(entry);
}

/** What came after the recipe was begun, the last of it. */
function after({ plan, check }: Pouring): Entry | undefined {
  const begun = recentDeeds.value.find(({ id }) => id === plan.id);
  if (begun === undefined) return undefined;
  return recent.value
    .filter(({ machine, place }) => machine === plan.machine && place > begun.place)
    .filter((entry) => entry.id !== check && isNewer(entry))
    .at(-1);
}

/** Undefined where nothing is poured here, or all of it is in and only has to be saved. */
export function overtakenAt(machine: string, steps: number): Newer | undefined {
  const pouring = pouringOf(machine).value;
  if (pouring === null || pouring.ticks.length >= steps) return undefined;
  const emptied_at = emptiedAt(machine);
  if (emptied_at !== undefined) return { kind: "clean_out", measured_at: emptied_at };
  return after(pouring);
}

export function overtakenWords({ kind, measured_at }: Newer): string {
  const time = writeMoment(measured_at);
  return say(kind === "clean_out" ? "pour.old_clean" : "pour.old_check", { time });
}

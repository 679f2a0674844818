// A newer check or a clean-out: the numbers of a recipe that was begun before it hold no longer, and the
// rest of its buckets would go into a sump that holds something else now.
import { isMeasured } from "../../../store/log/pinned";
import type { AnyEntry, CheckEntry, Entry } from "../../../store/log/entry";
import { recent, recentDeeds } from "../../../store/log/journal";
import { say } from "../../../words/say";
import { writeMoment } from "../../../words/times";
import { drainedAt } from "../../clean/stopped";
import { isDaysAhead } from "../../now";
import { pouringOf } from "../../../store/underway/pouring";

/** What ended a recipe, and when. */
type Newer = Pick<Entry, "kind" | "measured_at">;

type Begun = Pick<AnyEntry, "place" | "strand">;

function isNewer(entry: Entry): boolean {
  if (entry.kind === "clean_out") return entry.body.finished;
  return entry.kind === "check" && isMeasured(entry);
}

/** What came at a machine after a place in the log and ends the recipe of a check, the last of it. */
function after(at: string, begun: Begun | undefined, check: string): Newer | undefined {
  const drained = drainedAt(at);
  if (drained !== undefined) return { kind: "clean_out", measured_at: drained.at };
  if (begun === undefined) return undefined;
  return recent.value
    .filter(({ machine, place }) => machine === at && place > begun.place)
    .filter((entry) => entry.id !== check && isNewer(entry))
    .filter(({ strand, measured_at }) => strand === begun.strand || !isDaysAhead(measured_at))
    .at(-1);
}

/** Undefined where nothing is poured here, or all of it is in and only has to be saved. */
export function overtakenAt(machine: string, steps: number): Newer | undefined {
  const pouring = pouringOf(machine).value;
  if (pouring === null || pouring.ticks.length >= steps) return undefined;
  const { plan, check } = pouring;
  const begun = recentDeeds.value.find(({ id }) => id === plan.id);
  return after(machine, begun, check);
}

/** The same of a recipe that nobody has begun. */
export function overtakenCheck(check: CheckEntry): Newer | undefined {
  return after(check.machine, check, check.id);
}

/** Of a recipe of which nothing was poured. */
export function supersededWords({ kind, measured_at }: Newer): string {
  const time = writeMoment(measured_at);
  return say(kind === "clean_out" ? "saved.old_clean" : "saved.old_check", { time });
}

export function overtakenWords({ kind, measured_at }: Newer): string {
  const time = writeMoment(measured_at);
  return say(kind === "clean_out" ? "pour.old_clean" : "pour.old_check", { time });
}

// The newest strength that the log knows of a charge, for what is asked without a reading: that of a check or
// a second reading, or that after a recipe which went in as it was shown.
import type { HoldCheckBody } from "../../../core/messages";
import { isHolding } from "../../../store/log/entry";
import { isGivenUp, lastReread, pouredAfter } from "../../../store/log/deeds";
import { readAtOf } from "../../../store/log/dueparts";
import { recentDeeds } from "../../../store/log/journal";
import { lastCheckWith } from "../../../store/log/machines";
import { emptiedAt, unmixedAt } from "../../../store/log/mixing";
import { hasStrength, isPlanned, type Planned } from "../../../store/log/pinned";
import { drainedAt } from "../../clean/stopped";

type Before = Pick<HoldCheckBody, "last" | "read">;

/** The last recipe of this charge. */
export function plannedOf(machine: string): Planned | undefined {
  const planned = lastCheckWith(machine, isPlanned);
  if (drainedAt(machine) !== undefined) return undefined;
  return planned !== undefined && planned.place > emptiedAt(machine) ? planned : undefined;
}

/** Whether the log says nothing else of a recipe than that it went in as it was shown. */
function isAsShown(planned: Planned): boolean {
  if (planned.way !== undefined) return false;
  const went = pouredAfter(planned.machine, planned.place);
  if (went === null) return true;
  const plans = recentDeeds.value
    .filter((deed) => deed.kind === "plan")
    .filter(({ body }) => body.check === planned.id)
    .map(({ id }) => id);
  const isOwn = recentDeeds.value
    .filter((deed) => deed.kind === "pour")
    .filter(({ body }) => plans.includes(body.plan))
    .some(({ id }) => id === went.last.id);
  const poured = went.rows.reduce((sum, { count }) => sum + count, 0);
  const isKnown = !went.hasUnknown && went.rows.every(({ kind }) => kind !== "unknown");
  return isOwn && isKnown && poured === planned.shown.plan.totals.buckets;
}

/**
 * Nothing where nobody knows the strength any more, as after a top-up without a reading, after what was told
 * since, or where the newest reading was too early: pycore gives no worst case then. The last recipe also tells the usual mix, beside a later reading.
 */
export function beforeOf(machine: string): Before {
  if (drainedAt(machine) !== undefined) return {};
  const emptied = emptiedAt(machine);
  const check = lastCheckWith(machine, hasStrength);
  const again = lastReread(machine);
  const newest = [check, again]
    .filter((one) => one !== undefined)
    .filter(({ place }) => place > emptied)
    .sort((a, b) => a.place - b.place)
    .at(-1);
  const held = lastCheckWith(machine, isHolding);
  if (newest === undefined || (held !== undefined && held.place > newest.place)) return {};
  if (unmixedAt(machine, readAtOf(newest), newest.place) !== null) return {};
  const planned = plannedOf(machine);
  const last =
    planned === undefined ? {} : { last: { check: planned.body, at: planned.measured_at } };
  const isRecipe = planned !== undefined && newest.id === planned.id;
  if (isRecipe && !isGivenUp(planned.id)) return isAsShown(planned) ? last : {};
  if (pouredAfter(machine, newest.place) !== null) return {};
  const { machine: typed, reading } = newest.body;
  return { ...last, read: { machine: typed, reading, at: newest.measured_at } };
}

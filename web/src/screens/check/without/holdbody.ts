// What pycore is asked about a dip without a reading: the dip, and what the log knows of before.
import type { HoldCheckBody, Typed } from "../../../core/messages";
import { isHolding, isWhole, type MachineEntry } from "../../../store/log/entry";
import { lastCheckWith } from "../../../store/log/machines";
import { hasStrength, isPlanned, saysUsual, type Planned } from "../../../store/log/pinned";
import { dipTyped, fillTyped, type Walk } from "../../../store/underway/walk";

/** What was typed now or at an earlier top-up; else the mix of a top-up after the last recipe. */
function usualOf(id: string, walk: Walk, planned: Planned | undefined): Typed | undefined {
  if (walk.usual.trim() !== "") return { text: walk.usual, unit: "%" };
  const said = lastCheckWith(id, saysUsual)?.body.usual;
  if (said !== undefined) return said;
  const held = lastCheckWith(id, isHolding);
  if (held === undefined || held.place < (planned?.place ?? 0)) return undefined;
  const { value, unit } = held.shown.shown.usual;
  return { text: String(value), unit };
}

/**
 * After a top-up without a reading nobody knows the strength any more: then neither the last check
 * nor a later reading is sent, and pycore gives no worst case.
 */
function beforeOf(id: string, planned: Planned | undefined): Pick<HoldCheckBody, "last" | "read"> {
  const newest = lastCheckWith(id, hasStrength);
  const held = lastCheckWith(id, isHolding);
  if (newest === undefined || (held !== undefined && held.place > newest.place)) return {};
  const last =
    planned === undefined ? {} : { last: { check: planned.body, at: planned.measured_at } };
  if (isWhole(newest)) return last;
  const { machine, reading } = newest.body;
  return { ...last, read: { machine, reading, at: newest.measured_at } };
}

export function holdBody(
  machine: MachineEntry,
  walk: Walk,
  now: string,
  before = true,
): HoldCheckBody {
  const id = machine.machine;
  const typed = machine.body.machine;
  const planned = lastCheckWith(id, isPlanned);
  const usual = usualOf(id, walk, planned);
  return {
    machine: typed,
    dip: dipTyped(typed, walk),
    ...(usual === undefined ? {} : { usual }),
    ...fillTyped(typed, walk),
    ...(before ? beforeOf(id, planned) : {}),
    now,
  };
}

// What pycore is asked about a dip without a reading: the dip, and what the log knows of before.
import type { HoldCheckBody, Typed } from "../../../core/messages";
import { isHolding, type MachineEntry } from "../../../store/log/entry";
import { lastCheckWith } from "../../../store/log/machines";
import { saysUsual, type Planned } from "../../../store/log/pinned";
import { beforeOf, plannedOf } from "./before";
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

export function holdBody(
  machine: MachineEntry,
  walk: Walk,
  now: string,
  before = true,
): HoldCheckBody {
  const id = machine.machine;
  const typed = machine.body.machine;
  const planned = plannedOf(id);
  const usual = usualOf(id, walk, planned);
  return {
    machine: typed,
    dip: dipTyped(typed, walk),
    ...(usual === undefined ? {} : { usual }),
    ...fillTyped(typed, walk),
    ...(before ? beforeOf(id) : {}),
    now,
  };
}

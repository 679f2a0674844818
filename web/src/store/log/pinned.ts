// What is asked of a machine's last check, however long ago it was. Whoever opens only a part of the log
// holds the last one of each of these, so that a part that has none means that there is none.
import type { PlanCheckResult } from "../../core/messages";
import {
  hasDip,
  hasPlan,
  hasReading,
  isHolding,
  isLookOnly,
  isWhole,
  type CheckEntry,
  type HoldEntry,
  type ReadingEntry,
  type WholeEntry,
} from "./entry";

export type Planned = WholeEntry & { readonly shown: PlanCheckResult };

export function isPlanned(check: CheckEntry): check is Planned {
  return isWhole(check) && hasPlan(check.shown);
}

/** A reading that became a per cent. */
export function hasStrength(check: CheckEntry): check is WholeEntry | ReadingEntry {
  return hasReading(check) && check.shown.assessment.strength?.strength_pct !== undefined;
}

/** A top-up without a reading where somebody said what is usual. */
export function saysUsual(check: CheckEntry): check is HoldEntry {
  return isHolding(check) && check.body.usual !== undefined;
}

/** More than a look. */
export function isMeasured(check: CheckEntry): boolean {
  return !isLookOnly(check);
}

export const PINNED: readonly ((check: CheckEntry) => boolean)[] = [
  hasDip,
  hasReading,
  hasStrength,
  isHolding,
  isMeasured,
  isPlanned,
  saysUsual,
];

// Top-ups of the log that were dipped before and after: each may be a step of the pour test for nothing.
import type { MachineTyped, Typed } from "../../core/messages";
import { hasDip, isHolding, type CheckEntry } from "../../store/entry";
import { entries } from "../../store/journal";
import { storedRecipe } from "../check/chosen";
import { machineOf, type Form } from "./form";

export interface ToppedUp {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly before: Typed;
  readonly after: Typed;
  /** Of the recipe; 0 where it names none, such as for a hose. */
  readonly buckets: number;
}

/** Longer apart, what evaporates and is carried out is as much as a bucket: common practice, no source. */
const MOST_APART_MS = 8 * 60 * 60 * 1000;
/** More than these say little more, and nobody remembers what was poured. */
const MOST_PAIRS = 12;

/** What gives the digits of a dip their meaning; only dips of one stick fit together. */
function stickOf({ sump }: MachineTyped): string {
  const { read_as = "depth", dip_from = "bottom", reference_height, zero_offset } = sump;
  return JSON.stringify([read_as, dip_from, reference_height, zero_offset]);
}

type Dipped = Extract<CheckEntry, { body: { dip: unknown } }>;

function isTopUp(check: Dipped): boolean {
  return isHolding(check) || (storedRecipe(check)?.pours.length ?? 0) > 0;
}

/** A stick on chips or a level while the pump runs tells another depth. */
function isTrue({ body: { dip } }: Dipped): boolean {
  const isHard = dip.how === undefined || dip.how === "hard_floor";
  return isHard && dip.pump !== "running" && dip.waited !== false;
}

function isPair(before: Dipped, after: Dipped, stick: string): boolean {
  const apart = Date.parse(after.measured_at) - Date.parse(before.measured_at);
  const isSoon = apart > 0 && apart <= MOST_APART_MS;
  const both = [before, after];
  const isSame = both.every(({ body }) => stickOf(body.machine) === stick);
  return isTopUp(before) && isSoon && isSame && both.every(isTrue);
}

/** The newest first. */
export function toppedUp(form: Form): readonly ToppedUp[] {
  const stick = stickOf(machineOf(form));
  const dips = entries.value
    .filter((entry) => entry.kind === "check")
    .filter((check) => check.machine === form.machine)
    .filter(hasDip);
  return dips
    .flatMap((after, i) => {
      const before = dips[i - 1];
      if (before === undefined || !isPair(before, after, stick)) return [];
      return [
        {
          id: after.id,
          from: before.measured_at,
          to: after.measured_at,
          before: before.body.dip.depth,
          after: after.body.dip.depth,
          buckets: storedRecipe(before)?.buckets ?? 0,
        },
      ];
    })
    .reverse()
    .slice(0, MOST_PAIRS);
}

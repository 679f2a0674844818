// Top-ups of the log that were dipped before and after: each may be a step of the pour test for nothing.
import type { DipTyped, MachineTyped, Typed } from "../../../core/messages";
import { hasDip, isHolding, type CheckEntry } from "../../../store/log/entry";
import { deeds, entries } from "../../../store/log/journal";
import { storedRecipe } from "../../check/recipe/chosen";
import { machineOf, type Form } from "../form";

export interface ToppedUp {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly before: Typed;
  readonly after: Typed;
  /** Of the recipe; 0 where it names none, such as for a hose. */
  readonly buckets: number;
  /** What the log says went in; 0 where nobody ticked a bucket. */
  readonly poured: number;
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

/** A dip of a check or of a second reading, and whether anything was to be poured after it. */
interface Dipped {
  readonly id: string;
  readonly at: string;
  readonly place: number;
  readonly machine: MachineTyped;
  readonly dip: DipTyped;
  readonly isTopUp: boolean;
  readonly buckets: number;
}

function ofCheck(check: CheckEntry): readonly Dipped[] {
  if (!hasDip(check)) return [];
  const { id, measured_at: at, place, body } = check;
  const recipe = storedRecipe(check);
  const isTopUp = isHolding(check) || (recipe?.pours.length ?? 0) > 0;
  const { machine, dip } = body;
  return [{ id, at, place, machine, dip, isTopUp, buckets: recipe?.buckets ?? 0 }];
}

function dipsOf(id: string): readonly Dipped[] {
  const checks = entries.value
    .filter((entry) => entry.kind === "check")
    .filter(({ machine }) => machine === id)
    .flatMap(ofCheck);
  const again = deeds.value
    .filter((deed) => deed.kind === "recheck")
    .filter(({ machine }) => machine === id)
    .flatMap(({ id: name, measured_at: at, place, body: { machine, dip } }): Dipped[] =>
      dip === undefined ? [] : [{ id: name, at, place, machine, dip, isTopUp: false, buckets: 0 }],
    );
  return [...checks, ...again].sort((one, other) => one.place - other.place);
}

/** A stick on chips or a level while the pump runs tells another depth. */
function isTrue({ dip }: Dipped): boolean {
  const isHard = dip.how === undefined || dip.how === "hard_floor";
  return isHard && dip.pump !== "running" && dip.waited !== false;
}

/** Buckets that were ticked between two dips. */
function pouredBetween(machine: string, before: Dipped, after: Dipped): number {
  return deeds.value
    .filter((deed) => deed.kind === "pour")
    .filter((deed) => deed.machine === machine)
    .filter(({ place }) => place > before.place && place < after.place)
    .flatMap(({ body }) => body.pours)
    .reduce((sum, { count }) => sum + count, 0);
}

function isPair(before: Dipped, after: Dipped, poured: number, stick: string): boolean {
  const apart = Date.parse(after.at) - Date.parse(before.at);
  const isSoon = apart > 0 && apart <= MOST_APART_MS;
  const both = [before, after];
  const isSame = both.every(({ machine }) => stickOf(machine) === stick);
  return (before.isTopUp || poured > 0) && isSoon && isSame && both.every(isTrue);
}

/** The newest first. */
export function toppedUp(form: Form): readonly ToppedUp[] {
  const stick = stickOf(machineOf(form));
  const dips = dipsOf(form.machine);
  return dips
    .flatMap((after, i): ToppedUp[] => {
      const before = dips[i - 1];
      if (before === undefined) return [];
      const poured = pouredBetween(form.machine, before, after);
      if (!isPair(before, after, poured, stick)) return [];
      const depths = { before: before.dip.depth, after: after.dip.depth };
      const { id, at: to } = after;
      return [{ id, from: before.at, to, ...depths, buckets: before.buckets, poured }];
    })
    .reverse()
    .slice(0, MOST_PAIRS);
}

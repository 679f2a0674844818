// What the log says of a machine before something is added.
import type { Answer, Core } from "../../core/client";
import type { Doubt, LookBackBody, LookBackResult } from "../../core/messages";
import { lines, load } from "../../store/log/journal";
import { lastCheckWith } from "../../store/log/machines";
import { linesOf } from "../../store/log/onemachine";
import { ownLimits } from "../../store/written/shop";
import { dipTyped, readingTyped, type Walk } from "../../store/underway/walk";
import { hasDip, type MachineEntry } from "../../store/log/entry";
import { isoWithOffset } from "../../words/times";
import { useAsked } from "../backup/asked";
import { now_ms } from "../now";

type Measured = Pick<LookBackBody, "dip" | "reading">;

function bodyOf(machine: string, measured: Measured): LookBackBody {
  const limits = ownLimits.value;
  return {
    lines: linesOf(machine),
    machine,
    now: isoWithOffset(new Date(now_ms.peek())),
    ...(limits === null ? {} : { limits }),
    ...measured,
  };
}

/** Null until pycore has answered; without a dip there is no word about the level. */
export function useLookBack(
  { machine }: MachineEntry,
  measured: Measured = {},
  waits = false,
): Answer<LookBackResult> | null {
  const about = `${machine} ${lines.value.length} ${waits ? "" : JSON.stringify(measured)}`;
  return useAsked("look_back", about, () => (waits ? null : bodyOf(machine, measured)));
}

/**
 * What the log says of the reading at Continue. Nothing, while older entries are still being read: then the
 * page before the recipe asks.
 */
export async function doubtsByLog(
  core: Core,
  { machine, body }: MachineEntry,
  walk: Walk,
): Promise<readonly Doubt[]> {
  if (load.value.kind !== "ready" || walk.reading.trim() === "") return [];
  const reading = readingTyped(body.machine, walk);
  const answer = await core.ask("look_back", bodyOf(machine, { reading }));
  return answer.kind === "ok" ? answer.result.doubts : [];
}

export interface LevelChange {
  /** Null where nothing can be said: no dip, no earlier one, or no answer. */
  readonly found: LookBackResult | null;
  /** Whether the answer is still to come. */
  readonly isOpen: boolean;
}

/** The page on which a number is being typed; null on every other one. */
export type Typing = "dip" | "reading" | null;

/**
 * Of the dip and the reading of a walk. Where nobody has dipped before there is nothing to ask about the
 * level; while a number is typed nothing is asked about it, since the drawing that follows each digit would
 * wait for the log.
 */
export function useLevelChange(machine: MachineEntry, walk: Walk, typing: Typing): LevelChange {
  const typed = machine.body.machine;
  const isFirst = lastCheckWith(machine.machine, hasDip) === undefined;
  const isDipped = !isFirst && walk.dip.trim() !== "";
  const isRead = typing !== "reading" && walk.reading.trim() !== "";
  const measured = {
    ...(isDipped ? { dip: dipTyped(typed, walk) } : {}),
    ...(isRead ? { reading: readingTyped(typed, walk) } : {}),
  };
  const waits = typing === "dip" || (isFirst && !isRead);
  const answer = useLookBack(machine, measured, waits);
  const found = !waits && answer?.kind === "ok" ? answer.result : null;
  return { found, isOpen: !isFirst && (waits || answer === null) };
}

type Verdict = NonNullable<LookBackResult["level"]>["verdict"];

const ASKED: ReadonlySet<Verdict> = new Set<Verdict>(["lost", "gained"]);

/** Whether the log leaves the level unexplained. */
export function isUnexplained(found: LookBackResult | null): boolean {
  return found?.level !== undefined && ASKED.has(found.level.verdict);
}

/** Whether anything is asked about the time since the last dip. */
export function isSinceAsked(found: LookBackResult | null): boolean {
  return found?.topped_up === true || isUnexplained(found);
}

/** Answers after which it is still to be looked into before anything is poured. */
const STILL_OPEN: Readonly<Partial<Record<Verdict, readonly string[]>>> = {
  lost: ["", "leak", "unknown"],
  gained: ["", "water_getting_in", "unknown"],
};

/** A loss or gain that nobody has put down to use or to somebody's hand: it is explained first. */
export function isToExplain(found: LookBackResult | null, walk: Walk): boolean {
  const verdict = found?.level?.verdict;
  return verdict !== undefined && STILL_OPEN[verdict]?.includes(walk.levelChange) === true;
}

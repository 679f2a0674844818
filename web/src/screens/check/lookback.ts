// What the log says of a machine before something is added.
import { useEffect, useState } from "preact/hooks";
import type { Answer, Core } from "../../core/client";
import type { Doubt, LookBackBody, LookBackResult } from "../../core/messages";
import { lines, load } from "../../store/log/journal";
import { lastCheckWith } from "../../store/log/machines";
import { linesOf } from "../../store/log/onemachine";
import { dipTyped, readingTyped, type Walk } from "../../store/underway/walk";
import { hasDip, type MachineEntry } from "../../store/log/entry";
import { isoWithOffset } from "../../words/times";
import { useAsked } from "../backup/asked";
import { now_ms } from "../now";

type Measured = Pick<LookBackBody, "dip" | "reading">;

function bodyOf(machine: string, measured: Measured): LookBackBody {
  return {
    lines: linesOf(machine),
    machine,
    now: isoWithOffset(new Date(now_ms.peek())),
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
  /** Whether the answer about the level is still to come. */
  readonly isOpen: boolean;
  /** The same about the reading. */
  readonly isReadingOpen: boolean;
}

/** What is typed on a page: one of the two numbers, either of them, or neither. */
export type Typing = "dip" | "reading" | "both" | null;

/** The keys have rested by then, and most people type on sooner: chosen, not measured. */
const KEYS_REST_MS = 500;

/** Whether `text` has stood for so long, or from the beginning. */
function useStood(text: string): boolean {
  const [stood, setStood] = useState(text);
  useEffect(() => {
    if (stood === text) return undefined;
    const timer = setTimeout(() => {
      setStood(text);
    }, KEYS_REST_MS);
    return () => {
      clearTimeout(timer);
    };
  }, [text, stood]);
  return stood === text;
}

/** The answer about one of the numbers, once nobody types it any more. */
function useMeasured(machine: MachineEntry, measured: Measured, typing: Typing, waits: boolean) {
  const stood = useStood(JSON.stringify(measured));
  const isHeldBack = waits || (typing === "both" && !stood);
  const answer = useLookBack(machine, measured, isHeldBack);
  return isHeldBack ? null : answer;
}

const resultOf = (answer: Answer<LookBackResult> | null): LookBackResult | null =>
  answer?.kind === "ok" ? answer.result : null;

/**
 * Of the dip and the reading of a walk, each asked about alone: what the log says of one stays while the
 * other is typed. Where nobody has dipped before there is nothing to ask about the level. While a number is
 * typed nothing is asked about it, since the recipe that follows each digit would wait for the log.
 */
export function useLevelChange(machine: MachineEntry, walk: Walk, typing: Typing): LevelChange {
  const typed = machine.body.machine;
  const isFirst = lastCheckWith(machine.machine, hasDip) === undefined;
  const isDipped = !isFirst && walk.dip.trim() !== "";
  const isRead = walk.reading.trim() !== "";
  const waits = { dip: isFirst || typing === "dip", reading: !isRead || typing === "reading" };
  const depth = isDipped ? { dip: dipTyped(typed, walk) } : {};
  const shows = isRead ? { reading: readingTyped(typed, walk) } : {};
  const dip = useMeasured(machine, depth, typing, waits.dip);
  const read = useMeasured(machine, shows, typing, waits.reading);
  const [level, doubted] = [resultOf(dip), resultOf(read)];
  const found = level ?? doubted;
  return {
    found: found && { ...found, doubts: doubted?.doubts ?? [] },
    isOpen: !isFirst && dip === null,
    isReadingOpen: !waits.reading && read === null && load.value.kind === "ready",
  };
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

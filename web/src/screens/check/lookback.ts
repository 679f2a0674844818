// What the log says of a machine before something is added.
import type { Answer } from "../../core/client";
import type { DipTyped, LookBackBody, LookBackResult } from "../../core/messages";
import { lastCheckWith, lines } from "../../store/journal";
import { linesOf } from "../../store/onemachine";
import { dipTyped, type Walk } from "../../store/walk";
import { hasDip, type MachineEntry } from "../../store/entry";
import { isoWithOffset } from "../../words/times";
import { useAsked } from "../backup/asked";
import { now_ms } from "../now";

/** Null until pycore has answered; without a dip there is no word about the level. */
export function useLookBack(
  { machine }: MachineEntry,
  dip: DipTyped | null = null,
  waits = false,
): Answer<LookBackResult> | null {
  const about = `${machine} ${lines.value.length} ${waits ? "" : JSON.stringify(dip)}`;
  const ask = (): LookBackBody => ({
    lines: linesOf(machine),
    machine,
    now: isoWithOffset(new Date(now_ms.peek())),
    ...(dip === null ? {} : { dip }),
  });
  return useAsked("look_back", about, () => (waits ? null : ask()));
}

export interface LevelChange {
  /** Null where nothing can be said: no dip, no earlier one, or no answer. */
  readonly found: LookBackResult | null;
  /** Whether the answer is still to come. */
  readonly isOpen: boolean;
}

/**
 * Of the dip of a walk. Where nobody has dipped before there is nothing to ask; while the dip is typed
 * neither, since the drawing that follows each digit would wait for the log.
 */
export function useLevelChange(machine: MachineEntry, walk: Walk, isTyping: boolean): LevelChange {
  const isFirst = lastCheckWith(machine.machine, hasDip) === undefined;
  const dip = isFirst || walk.dip.trim() === "" ? null : dipTyped(machine.body.machine, walk);
  const answer = useLookBack(machine, dip, isFirst || isTyping);
  if (isFirst) return { found: null, isOpen: false };
  return { found: answer?.kind === "ok" ? answer.result : null, isOpen: answer === null };
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

/** A loss that nobody has put down to use or to somebody's hand: the leak is looked for first. */
export function isLeakFirst(found: LookBackResult | null, walk: Walk): boolean {
  const said = ["", "leak", "unknown"].includes(walk.levelChange);
  return found?.level?.verdict === "lost" && said;
}

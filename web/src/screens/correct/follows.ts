// What is asked before a correction is saved: what the new numbers come to, and what they lead to.
import { useEffect, useState } from "preact/hooks";
import type { Answer } from "../../core/client";
import type { JudgeLookResult } from "../../core/messages";
import type { AnyEntry } from "../../store/log/entry";
import { pouringOf } from "../../store/underway/pouring";
import { say } from "../../words/say";
import { isBegun } from "../check/pour/start";
import { useAnswer, useCore } from "../core";
import { askWhole, isMeasuring, judgeOf, type Shown } from "./asked";
import type { Content } from "./content";

/** Null until pycore has answered; entries in which nothing was measured have nothing to wait for. */
export function useOutcome(entry: AnyEntry, after: Content): Answer<Shown | null> | null {
  const core = useCore();
  const about = JSON.stringify(after);
  const isAsked = isMeasuring(entry);
  const isFailed = core.phase.value.kind === "failed";
  const [got, setGot] = useState<{ about: string; answer: Answer<Shown> } | null>(null);
  useEffect(() => {
    let isOld = false;
    if (isAsked)
      void askWhole(core, entry, after).then((answer) => {
        if (!isOld) setGot({ about, answer });
      });
    return () => {
      isOld = true;
    };
    // After Try again the same question is asked anew.
  }, [about, isFailed]);
  if (!isAsked) return { kind: "ok", result: null };
  return got?.about === about ? got.answer : null;
}

interface Advised {
  /** Whether the advice is still to come. */
  readonly isOpen: boolean;
  readonly advice: JudgeLookResult | null;
}

/** The advice is asked for anew only where what was seen or measured reads otherwise now. */
export function useAdvice(before: Content, after: Content): Advised {
  const [was, now] = [judgeOf(before), judgeOf(after)];
  const isSame = JSON.stringify(was) === JSON.stringify(now);
  const answer = useAnswer("judge_look", isSame ? null : now);
  if (isSame || now === null) return { isOpen: false, advice: null };
  return { isOpen: answer === null, advice: answer?.kind === "ok" ? answer.result : null };
}

interface ShownLook {
  readonly look?: object;
}

/** Beside the recipe: the advice as it was shown, or as it reads now with what was chosen then. */
function lookOf(entry: AnyEntry, advice: JudgeLookResult | null): ShownLook {
  const { look } = ("shown" in entry ? entry.shown : {}) as ShownLook;
  if (advice === null) return look === undefined ? {} : { look };
  return { look: { ...look, ...advice } };
}

/** What the entry of the correction keeps as shown; null for what shows nothing but its content. */
export function shownOf(
  entry: AnyEntry,
  outcome: Shown | null,
  advice: JudgeLookResult | null,
  kept: readonly string[],
): object | null {
  if (!("shown" in entry) || entry.kind === "machine") return null;
  const asked = kept.length === 0 ? {} : { kept };
  return { ...(outcome ?? entry.shown), ...lookOf(entry, advice), ...asked };
}

/** What becomes of what was done by the old numbers, in one sentence each. */
export function followsOf(entry: AnyEntry): readonly string[] {
  if (entry.kind === "note") return [say("amend.follows_note")];
  if (entry.kind === "machine_state") return [say("amend.follows_state")];
  if (entry.kind !== "check") return [say("amend.follows_amounts")];
  const pouring = pouringOf(entry.machine).value;
  const isUnderWay = pouring?.check === entry.id;
  return [
    say("amend.follows_check"),
    ...(isUnderWay ? [say("amend.pour_open")] : []),
    ...(!isUnderWay && isBegun(entry) ? [say("amend.poured_by_old")] : []),
  ];
}

// Asking for the recipe while none stands there: every row tells what is wrong with it, and what is unusual
// is asked once, as Continue does on the guided pages.
import { useEffect, useRef, useState } from "preact/hooks";
import type { MachineEntry } from "../../../store/log/entry";
import { assessBody, planBody, type Walk } from "../../../store/underway/walk";
import { useCore } from "../../core";
import { checkOf, emptyError, useGate, type Check, type Gate } from "../../gate";
import { doubtsByLog } from "../lookback";
import { openDoubts } from "../recipe/recipe";
import type { CheckProps } from "../steps";
import { missingOf } from "./live";

/** The rows, each alone, so that one refusal does not hide the other; then all of it together. */
function useLook(machine: MachineEntry, walk: Walk, isWhole: boolean) {
  const core = useCore();
  const typed = machine.body.machine;
  return async (): Promise<Check | null> => {
    const parts = [
      { dip: true, reading: false, isTyped: walk.dip.trim() !== "" },
      { dip: false, reading: true, isTyped: walk.reading.trim() !== "" },
    ].filter(({ isTyped }) => isTyped);
    const answers = await Promise.all(
      parts.map((part) => core.ask("assess_sump", assessBody(typed, walk, part)).then(checkOf)),
    );
    const checks = answers.filter((check) => check !== null);
    const errors = checks.flatMap((check) => check.errors);
    const isAsked = isWhole && errors.length === 0;
    const whole = isAsked ? checkOf(await core.ask("plan_check", planBody(typed, walk))) : null;
    // Without a factor there is no recipe, and a page of its own says so.
    const refused = (whole?.errors ?? []).filter(({ code }) => code !== "no_factor");
    const found = [...checks, ...(whole === null ? [] : [whole])].flatMap((check) => check.doubts);
    const byLog = errors.length === 0 ? await doubtsByLog(core, machine, walk) : [];
    const doubts = [...found, ...byLog];
    return { errors: [...errors, ...refused], doubts: openDoubts(doubts, walk.kept) };
  };
}

export function useAsking({ machine, walk, change }: CheckProps): Gate {
  const missing = missingOf(machine, walk);
  return useGate({
    plain: missing.map(({ path }) => emptyError(path)),
    look: useLook(machine, walk, missing.length === 0),
    kept: walk.kept,
    onKept: (kept) => {
      change({ kept });
    },
    // The recipe comes by itself; what was not seen is not saved.
    onPass: () => undefined,
    about: JSON.stringify({ ...walk, kept: [], prepared: null, missing: missing.length }),
  });
}

/**
 * A press that comes before the log was asked about the reading asks it first, as Continue does on the guided
 * pages. Where the reading is unlike the last one, nothing is done: the page tells it in a moment.
 */
export function useLogFirst({ machine, walk, since }: CheckProps, act: () => void) {
  const core = useCore();
  const [isAsking, setAsking] = useState(false);
  // The page that was pressed may be gone by then.
  const isHere = useRef(true);
  useEffect(
    () => () => {
      isHere.current = false;
    },
    [],
  );
  const press = async (): Promise<void> => {
    setAsking(true);
    const found = openDoubts(await doubtsByLog(core, machine, walk), walk.kept);
    if (!isHere.current) return;
    setAsking(false);
    if (found.length === 0) act();
  };
  return {
    isAsking,
    press: (): void => {
      if (since.isReadingOpen) void press();
      else act();
    },
  };
}

// A committing button ignores a second press for one second: an oily glove often taps twice. A press
// about something else (another number, another answer) is no second press and counts at once, unless it
// is the second half of a double tap: what it meets then came up under the finger and was not read. Not
// every phone counts taps, so what Save has brought, and what is ticked, rests for a second besides.
import { useEffect, useRef, useState } from "preact/hooks";

const REST_MS = 1_000;

/** Browsers count taps that follow each other at one place, also where another button came up there. */
const isSecondTap = (event: MouseEvent | undefined): boolean =>
  event !== undefined && event.detail > 1;

/** Whether what stands here, named by `about`, has only just come: a press may be meant for the one before. */
export function useRest(rests: boolean, about = ""): boolean {
  const [over, setOver] = useState<string | null>(null);
  useEffect(() => {
    if (!rests) return undefined;
    const timer = setTimeout(() => {
      setOver(about);
    }, REST_MS);
    return () => {
      clearTimeout(timer);
    };
  }, [rests, about]);
  return rests && over !== about;
}

export function useGuard(act: () => void, about = ""): (event?: MouseEvent) => void {
  const last = useRef({ at_ms: -REST_MS, about });
  return (event) => {
    const now_ms = performance.now();
    const isSecond = last.current.about === about && now_ms - last.current.at_ms < REST_MS;
    if (isSecond || isSecondTap(event)) return;
    last.current = { at_ms: now_ms, about };
    act();
  };
}

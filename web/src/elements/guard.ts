// A committing button ignores a second press for one second: an oily glove often taps twice. A press
// about something else (another number, another answer) is no second press and counts at once, unless it
// is the second half of a double tap: what it meets then came up under the finger and was not read.
import { useRef } from "preact/hooks";

const REST_MS = 1_000;

/** Browsers count taps that follow each other at one place, also where another button came up there. */
const isSecondTap = (event: MouseEvent | undefined): boolean =>
  event !== undefined && event.detail > 1;

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

// A committing button ignores a second press for one second: an oily glove often taps twice. A press
// about something else (another number, another answer) is no second press and counts at once.
import { useRef } from "preact/hooks";

const REST_MS = 1_000;

export function useGuard(act: () => void, about = ""): () => void {
  const last = useRef({ at_ms: -REST_MS, about });
  return () => {
    const now_ms = performance.now();
    const isSecond = last.current.about === about && now_ms - last.current.at_ms < REST_MS;
    if (isSecond) return;
    last.current = { at_ms: now_ms, about };
    act();
  };
}

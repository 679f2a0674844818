// A committing button ignores a second press for one second: an oily glove often taps twice.
import { useRef } from "preact/hooks";

const REST_MS = 1_000;

export function useGuard(act: () => void): () => void {
  const last = useRef(-REST_MS);
  return () => {
    const now = performance.now();
    if (now - last.current < REST_MS) return;
    last.current = now;
    act();
  };
}

// A committing button ignores a second press for one second: an oily glove often taps twice. A press
// about something else (another number, another answer) is no second press and counts at once. Where a
// press on the page before has brought this page, the rest of its taps meet what stands here now.
import { useEffect, useRef, useState } from "preact/hooks";

const REST_MS = 1_000;

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

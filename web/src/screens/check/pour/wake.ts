// The screen stays on while buckets are poured, where the phone can do that; the page says which.
import { useEffect, useState } from "preact/hooks";

export type Awake = "on" | "off";

interface Sentinel {
  readonly release: () => Promise<void>;
  readonly addEventListener: (type: "release", heard: () => void) => void;
}

interface WithWakeLock {
  readonly wakeLock?: { readonly request: (type: "screen") => Promise<Sentinel> };
}

async function ask(): Promise<Sentinel | null> {
  try {
    return (await (navigator as WithWakeLock).wakeLock?.request("screen")) ?? null;
  } catch {
    // Refused, for example on an empty battery: the place is kept all the same.
    return null;
  }
}

/** Taken again whenever the page comes back: the phone lets go of it in the background. */
export function useAwake(): Awake {
  const [awake, setAwake] = useState<Awake>("off");
  useEffect(() => {
    let held: Sentinel | null = null;
    let isOver = false;
    const take = async (): Promise<void> => {
      if (document.visibilityState !== "visible" || held !== null) return;
      const got = await ask();
      if (isOver) {
        void got?.release();
        return;
      }
      held = got;
      setAwake(got === null ? "off" : "on");
      got?.addEventListener("release", () => {
        held = null;
        setAwake("off");
      });
    };
    const onVisible = (): void => {
      void take();
    };
    document.addEventListener("visibilitychange", onVisible);
    void take();
    return () => {
      isOver = true;
      document.removeEventListener("visibilitychange", onVisible);
      void held?.release();
    };
  }, []);
  return awake;
}

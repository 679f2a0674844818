// What happens at Continue: pycore looks at the answer. Refused: a sentence, and the digits stay.
// Unusual: asked once. Calculator not there yet: the walk goes on, and the recipe page asks again.
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { Answer } from "../core/client";
import type { DeskError, Doubt } from "../core/messages";
import { useCore } from "./core";

export interface Check {
  readonly errors: readonly DeskError[];
  readonly doubts: readonly Doubt[];
}

export interface Gate {
  readonly errors: readonly DeskError[];
  readonly doubt: Doubt | null;
  readonly pass: () => void;
  readonly again: () => void;
  readonly keep: () => void;
}

/** A doubt is settled for the very number it was about; another number is asked about again. */
export function doubtName(doubt: Doubt): string {
  const about = `${doubt.path} ${doubt.got.value} ${doubt.got.unit}`;
  return doubt.code === "unusual" ? about : `${about} ${doubt.code}`;
}

export function checkOf<T extends { doubts?: Doubt[] }>(answer: Answer<T>): Check | null {
  if (answer.kind === "ok") return { errors: [], doubts: answer.result.doubts ?? [] };
  return answer.kind === "error" ? { errors: [answer.error], doubts: [] } : null;
}

/** What the page sees without pycore: nothing was typed. */
export function emptyError(path: string): DeskError {
  return { code: "empty", path, got: null, limit: {}, message: "" };
}

/** pycore's own word about a field comes first; what the page saw itself is added to it. */
function withPlain(check: Check | null, plain: readonly DeskError[]): Check {
  const errors = check?.errors ?? [];
  const more = plain.filter(({ path }) => errors.every((error) => error.path !== path));
  return { errors: [...errors, ...more], doubts: check?.doubts ?? [] };
}

interface GateOptions {
  /** Faults that need no calculator; they are told also while it starts. */
  readonly plain: readonly DeskError[];
  /** Asks pycore; null when it cannot answer now. */
  readonly look: () => Promise<Check | null>;
  readonly kept: readonly string[];
  readonly onKept: (kept: readonly string[]) => void;
  readonly onPass: () => void;
  /** The text of this question: another text ends an old message. */
  readonly about: string;
}

interface Shown extends Check {
  readonly about: string;
}

export function useGate({ plain, look, kept, onKept, onPass, about }: GateOptions): Gate {
  const core = useCore();
  const [shown, setShown] = useState<Shown>({ errors: [], doubts: [], about: "" });
  // What is asked about now; null once the page is gone.
  const asked = useRef<string | null>(null);
  const presses = useRef(0);
  useLayoutEffect(() => {
    asked.current = about;
    return () => {
      asked.current = null;
    };
  }, [about]);
  const current = shown.about === about ? shown : { errors: [], doubts: [], about };
  const settle = (check: Check | null, settled: readonly string[]): void => {
    const errors = check?.errors ?? [];
    const doubts = (check?.doubts ?? []).filter((doubt) => !settled.includes(doubtName(doubt)));
    setShown({ errors, doubts, about });
    if (errors.length === 0 && doubts.length === 0) onPass();
  };
  return {
    errors: current.errors,
    doubt: current.doubts[0] ?? null,
    pass: () => {
      if (core.phase.value.kind !== "ready") {
        settle({ errors: plain, doubts: [] }, kept);
        return;
      }
      presses.current += 1;
      const press = presses.current;
      void look().then((check) => {
        // An answer that comes late is about another text, or nobody waits for it any more. Pressed again,
        // the first question is dropped unanswered, which is no leave to go on.
        if (asked.current === about && presses.current === press)
          settle(withPlain(check, plain), kept);
      });
    },
    again: () => {
      setShown({ errors: [], doubts: [], about: "" });
    },
    keep: () => {
      const [first, ...rest] = current.doubts;
      if (first === undefined) return;
      const settled = [...kept, doubtName(first)];
      onKept(settled);
      settle({ errors: [], doubts: rest }, settled);
    },
  };
}

// How the screens reach pycore: live questions while something is typed, single ones at a press.
import { createContext } from "preact";
import { useContext, useLayoutEffect, useMemo, useRef } from "preact/hooks";
import type { Answer, Core } from "../core/client";
import type { Operations } from "../core/messages";

export const CoreContext = createContext<Core | null>(null);

export function useCore(): Core {
  const core = useContext(CoreContext);
  if (core === null) throw new Error("a screen stands outside the core's context");
  return core;
}

/**
 * The answer to `body` and to nothing else: null from the moment the body changes until its own
 * answer is there. A null body asks nothing.
 */
export function useAnswer<Op extends keyof Operations>(
  op: Op,
  body: Operations[Op]["body"] | null,
): Answer<Operations[Op]["result"]> | null {
  return useAnswerAhead(op, body).answer;
}

/** The same, with a way to ask already for what the key under the finger will make of it. */
export function useAnswerAhead<Op extends keyof Operations>(
  op: Op,
  body: Operations[Op]["body"] | null,
): {
  readonly answer: Answer<Operations[Op]["result"]> | null;
  readonly ahead: (body: Operations[Op]["body"]) => void;
} {
  const core = useCore();
  const question = useMemo(() => core.question(op), [core, op]);
  const key = body === null ? "" : JSON.stringify(body);
  const asked = useRef<string | null>(null);
  const isFailed = core.phase.value.kind === "failed";
  const answer = question.answer.value;
  useLayoutEffect(() => {
    asked.current = key;
    question.put(body);
    return () => {
      question.put(null);
    };
    // After Try again the same body is asked anew.
  }, [question, key, isFailed]);
  return { answer: asked.current === key ? answer : null, ahead: question.ahead };
}

/** The result alone, for drawings that stay empty while there is none. */
export function useResult<Op extends keyof Operations>(
  op: Op,
  body: Operations[Op]["body"] | null,
): Operations[Op]["result"] | null {
  const answer = useAnswer(op, body);
  return answer?.kind === "ok" ? answer.result : null;
}

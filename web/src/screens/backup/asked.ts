// One question about the log. Its body is large, so it is not compared but named.
import { useEffect, useState } from "preact/hooks";
import type { Answer } from "../../core/client";
import type { LogHead, Operations } from "../../core/messages";
import { heads, lacking, lines, load } from "../../store/log/journal";
import type { Head } from "../../store/log/witness";
import { useCore } from "../core";

const headOf = ({ log, count, head }: Head): LogHead => ({ log, count, head });

/** What the phone holds, as every question about the log wants it. */
export function storedLog(): { readonly lines: string[]; readonly heads: LogHead[] } {
  return {
    lines: lines.value.map(({ text }) => text),
    heads: [...heads.value, ...lacking.value].map(headOf),
  };
}

let slots = 0;
/** Of one place on a page: its newer question takes the place of the older one. */
function newSlot(): string {
  slots += 1;
  return `about the log ${slots}`;
}

/** The answer to the question named `about`; null until it is there. A null body asks nothing. */
export function useAnswer<Op extends keyof Operations>(
  op: Op,
  about: string,
  make: () => Operations[Op]["body"] | null,
): Answer<Operations[Op]["result"]> | null {
  const core = useCore();
  const [slot] = useState(newSlot);
  const isFailed = core.phase.value.kind === "failed";
  const [got, setGot] = useState<{
    readonly about: string;
    readonly answer: Answer<Operations[Op]["result"]>;
  } | null>(null);
  useEffect(() => {
    let isOld = false;
    const body = make();
    if (body === null) return undefined;
    // The log takes long: what nobody waits for any more is not worked out.
    void core.ask(op, body, slot).then((answer) => {
      if (!isOld) setGot({ about, answer });
    });
    return () => {
      isOld = true;
    };
    // After Try again the same question is asked anew.
  }, [about, isFailed]);
  return got?.about === about ? got.answer : null;
}

/** The same about the whole log: asked of a part of it, it would be answered as if there were no more. */
export function useAsked<Op extends keyof Operations>(
  op: Op,
  about: string,
  make: () => Operations[Op]["body"] | null,
): Answer<Operations[Op]["result"]> | null {
  const isWhole = load.value.kind === "ready";
  const answer = useAnswer(op, `${String(isWhole)} ${about}`, () => (isWhole ? make() : null));
  return isWhole ? answer : null;
}

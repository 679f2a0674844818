// One question about the whole log. Its body is large, so it is not compared but named.
import { useEffect, useState } from "preact/hooks";
import type { Answer } from "../../core/client";
import type { LogHead, Operations } from "../../core/messages";
import { heads, lacking, lines, load } from "../../store/journal";
import type { Head } from "../../store/witness";
import { useCore } from "../core";

const headOf = ({ log, count, head }: Head): LogHead => ({ log, count, head });

/** What the phone holds, as every question about the log wants it. */
export function storedLog(): { readonly lines: string[]; readonly heads: LogHead[] } {
  return {
    lines: lines.value.map(({ text }) => text),
    heads: [...heads.value, ...lacking.value].map(headOf),
  };
}

/** The answer to the question named `about`; null until it is there. A null body asks nothing. */
export function useAsked<Op extends keyof Operations>(
  op: Op,
  about: string,
  make: () => Operations[Op]["body"] | null,
): Answer<Operations[Op]["result"]> | null {
  const core = useCore();
  const isFailed = core.phase.value.kind === "failed";
  const [got, setGot] = useState<{
    readonly about: string;
    readonly answer: Answer<Operations[Op]["result"]>;
  } | null>(null);
  // A question about a part of the log would be answered as if there were no more.
  const isWhole = load.value.kind === "ready";
  useEffect(() => {
    let isOld = false;
    const body = isWhole ? make() : null;
    if (body === null) return undefined;
    void core.ask(op, body).then((answer) => {
      if (!isOld) setGot({ about, answer });
    });
    return () => {
      isOld = true;
    };
    // After Try again the same question is asked anew.
  }, [about, isFailed, isWhole]);
  return got?.about === about ? got.answer : null;
}

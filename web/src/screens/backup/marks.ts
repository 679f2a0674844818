// After an update pycore looks once at the lines in quarantine: what an older build could not read may be
// whole for this one. Only after both log and Python are there, and without holding up a question.
import { effect } from "@preact/signals";
import type { Core } from "../../core/client";
import { opened, quarantined, readNews } from "../../store/log/journal";
import { liftMarks, markedLines } from "../../store/log/marked";
import { isoWithOffset } from "../../words/times";
import { countNew } from "./reading";

/** Lines in one question: what a person asks meanwhile waits for one of them at the most. */
const AT_ONCE = 50;

async function wholeOf(core: Core, marked: readonly string[]): Promise<readonly string[] | null> {
  const body = { text: marked.join("\n"), lines: [], heads: [], now: isoWithOffset(new Date()) };
  const answer = await core.ask("read_export", body);
  if (answer.kind === "ok") return answer.result.added.slice(0, countNew(answer.result));
  // Refused as a whole: none of them is a line of a log.
  return answer.kind === "error" ? [] : null;
}

async function lookAnew(core: Core): Promise<void> {
  const marked = await markedLines();
  if (marked.length === 0) return;
  const whole = new Set<string>();
  for (let first = 0; first < marked.length; first += AT_ONCE) {
    const found = await wholeOf(core, marked.slice(first, first + AT_ONCE));
    // Without Python nothing is known; the next start asks again.
    if (found === null) return;
    for (const text of found) whole.add(text);
  }
  await liftMarks(whole);
  if (whole.size > 0) await readNews();
}

export function followMarks(core: Core): void {
  const stop = effect(() => {
    if (opened.value.kind !== "ready" || core.phase.value.kind !== "ready") return;
    const isAny = quarantined.peek() > 0;
    queueMicrotask(() => {
      stop();
      // What cannot be stored now stays marked.
      if (isAny) void lookAnew(core).catch(() => undefined);
    });
  });
}

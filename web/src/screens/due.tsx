// Which checks are due, by the shop's interval: pycore says so from the latest entries of each machine.
import type { CheckDue, DueChecksBody } from "../core/messages";
import { isOfDeed } from "../store/log/entry";
import { opened, recentPlaced } from "../store/log/journal";
import type { Placed } from "../store/log/lines";
import { say } from "../words/say";
import { isoWithOffset, writeShortDay } from "../words/times";
import { useAnswer } from "./backup/asked";
import { now_ms } from "./now";

/** What a due check can depend on, once a machine and a log; empty for any other entry. */
function bearing({ entry }: Placed): string {
  if (isOfDeed(entry)) {
    return entry.kind === "recheck" && entry.body.reading !== undefined ? "read again" : "";
  }
  if (entry.kind === "check") return "reading" in entry.body ? "read" : "";
  if (entry.kind === "clean_out") return entry.body.finished ? "emptied" : "";
  if (entry.kind === "shop_set") return `set ${Object.keys(entry.body).join(" ")}`;
  return entry.kind === "machine" || entry.kind === "machine_state" ? entry.kind : "";
}

function bearingLines(placed: readonly Placed[]): string[] {
  const last = new Map<string, string>();
  for (const one of placed) {
    const what = bearing(one);
    const { log, machine } = one.entry;
    if (what !== "") last.set(`${what} ${log} ${machine}`, one.line.text);
  }
  return [...last.values()];
}

export type DueChecks = ReadonlyMap<string, CheckDue>;

/** An interval has days, so the question is asked anew each hour. */
const ASKED_EVERY_MS = 3_600_000;

/** By machine; empty until pycore has answered. */
export function useDueChecks(): DueChecks {
  const isRead = opened.value.kind === "ready";
  const lines = isRead ? bearingLines(recentPlaced.value) : [];
  const hour = Math.floor(now_ms.value / ASKED_EVERY_MS);
  const about = `${String(hour)} ${lines.map((line) => line.slice(-66)).join()}`;
  const body: DueChecksBody = { lines, now: isoWithOffset(new Date(now_ms.peek())) };
  const answer = useAnswer("due_checks", about, () => (lines.length === 0 ? null : body));
  const checks = answer?.kind === "ok" ? answer.result.checks : [];
  return new Map(checks.map((check) => [check.machine, check]));
}

/** "Check due since 18 Nov"; null where none is due, or where there was no reading to count from. */
export function checkDueWords(check: CheckDue | undefined): string | null {
  if (check?.due !== true || check.due_s === undefined) return null;
  return say("machine.check_due", {
    day: writeShortDay(new Date(check.due_s * 1000).toISOString()),
  });
}

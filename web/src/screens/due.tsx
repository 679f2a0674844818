// Which checks and clean-outs are due: pycore says so from the latest entries of each machine.
import type { CheckDue, DueChecksBody } from "../core/messages";
import { careOf, firstPhs, mostOf } from "../store/log/care";
import { isOfDeed } from "../store/log/entry";
import { opened, recentBehind, recentPlaced } from "../store/log/journal";
import type { Line, Placed } from "../store/log/lines";
import { say } from "../words/say";
import { isoWithOffset, writeShortDay } from "../words/times";
import { useAnswer } from "./backup/asked";
import { now_ms } from "./now";

/** What of it a due check or clean-out can depend on; the latest of each count, by machine and log. */
function bearing({ entry }: Placed): readonly string[] {
  if (isOfDeed(entry)) {
    return entry.kind === "recheck" && entry.body.reading !== undefined ? ["read again"] : [];
  }
  if (entry.kind === "check")
    return [...("reading" in entry.body ? ["read"] : []), ...careOf(entry)];
  if (entry.kind === "clean_out") return entry.body.finished ? ["emptied"] : [];
  if (entry.kind === "shop_set") return [`set ${Object.keys(entry.body).join(" ")}`];
  return entry.kind === "machine" || entry.kind === "machine_state" ? [entry.kind] : [];
}

/**
 * What corrects entries, what takes a correction back, and what is in doubt or decides. Own lines come
 * before those from elsewhere, so one may stand before what it is about.
 */
function amending(ids: readonly string[], behind: readonly Line[]): readonly Line[] {
  const known = new Set(ids);
  let before = -1;
  while (before !== known.size) {
    before = known.size;
    for (const { amends, id } of behind) if (known.has(amends)) known.add(id);
  }
  return behind.filter(({ amends }) => amends === "" || known.has(amends));
}

function bearingLines(placed: readonly Placed[], behind: readonly Line[]): string[] {
  const first = firstPhs(placed.map(({ entry }) => entry));
  const times = new Map<string, number>();
  const isLate = (name: string, most: number): boolean => {
    const before = times.get(name) ?? 0;
    times.set(name, before + 1);
    return before < most;
  };
  const chosen = [...placed].reverse().filter((one) => {
    const { id, log, machine } = one.entry;
    const late = bearing(one).filter((what) => isLate(`${what} ${log} ${machine}`, mostOf(what)));
    return late.length > 0 || first.has(id);
  });
  const ids = chosen.map(({ entry }) => entry.id);
  const lines = new Set([...chosen.map(({ line }) => line).reverse(), ...amending(ids, behind)]);
  return [...lines].map(({ text }) => text);
}

export type DueChecks = ReadonlyMap<string, CheckDue>;

/** An interval has days, so the question is asked anew each hour. */
const ASKED_EVERY_MS = 3_600_000;

/** By machine; empty until pycore has answered. */
export function useDueChecks(): DueChecks {
  const isRead = opened.value.kind === "ready";
  const lines = isRead ? bearingLines(recentPlaced.value, recentBehind.value) : [];
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

/** What is due at a machine, a line for each. */
export function dueWords(check: CheckDue | undefined): readonly string[] {
  const words = [checkDueWords(check), check?.clean_out_due === true ? say("clean.due") : null];
  return words.filter((word) => word !== null);
}

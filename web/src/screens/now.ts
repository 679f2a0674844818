// The clock of the pages that say whether a time has passed. Counted from the clock and never by
// subtracting: a phone that slept is right again at once.
import { signal, type ReadonlySignal } from "@preact/signals";
import { writeClock, writeMoment } from "../words/times";

const EVERY_MS = 15_000;
const clock = signal(Date.now());
export const now_ms: ReadonlySignal<number> = clock;

function look(): void {
  clock.value = Date.now();
}

setInterval(look, EVERY_MS);
document.addEventListener("visibilitychange", look);

/** A clock time today, with its day otherwise. */
export function timeOf(iso: string): string {
  const isToday = new Date(iso).toDateString() === new Date(now_ms.value).toDateString();
  return isToday ? writeClock(iso) : writeMoment(iso);
}

const DAY_MS = 24 * 3_600_000;

/** By a clock of another day or year: what it wrote came after nothing. This clock may be some hours behind. */
export function isDaysAhead(iso: string): boolean {
  return Date.parse(iso) - now_ms.value > DAY_MS;
}

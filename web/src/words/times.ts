// Weekday and month name, never 03/04: that means two different days in two countries.
import { LOCALE, say } from "./say";

const DAY = { weekday: "short", day: "numeric", month: "short" } as const;
const CLOCK = { hour: "numeric", minute: "2-digit" } as const;

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const DAY_MS = 24 * HOUR_MS;

/** Made at the first use: each takes the engine a while, and the first page needs one at most. */
function formatOf(options: Intl.DateTimeFormatOptions): (at: Date) => string {
  let made: Intl.DateTimeFormat | undefined;
  return (at) => (made ??= new Intl.DateTimeFormat(LOCALE, options)).format(at);
}

const moment = formatOf({ ...DAY, ...CLOCK });
const day = formatOf({ weekday: "long", day: "numeric", month: "long", year: "numeric" });
const clock = formatOf(CLOCK);
const shortDay = formatOf({ day: "numeric", month: "short", year: "numeric" });
const tableDay = formatOf({ day: "numeric", month: "short", year: "2-digit" });
const axisDay = formatOf({ day: "numeric", month: "short" });
const axisMonth = formatOf({ month: "short", year: "numeric" });
let relative: Intl.RelativeTimeFormat | undefined;

/** Whether the calendar has this year-month-day: engines move 30 February on to March or refuse it. */
export function isCalendarDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const at = new Date(`${text}T00:00Z`);
  return !Number.isNaN(at.getTime()) && at.toISOString().startsWith(text);
}

/** January to December, as this language writes them. */
export function monthNames(): readonly string[] {
  const month = new Intl.DateTimeFormat(LOCALE, { month: "long" });
  return Array.from({ length: 12 }, (_, i) => month.format(new Date(2026, i, 1)));
}

/** "25 Nov 2026": two figures of a year would look like another day. */
export function writeShortDay(iso: string): string {
  return shortDay(new Date(iso));
}

/** "25 Nov 26", for a column of days. */
export function writeTableDay(iso: string): string {
  return tableDay(new Date(iso));
}

/** Seconds since 1970 beside an axis: "25 Nov", and over many months "Nov 2026". */
export function writeAxisDay(at_s: number, months: boolean): string {
  return (months ? axisMonth : axisDay)(new Date(at_s * 1000));
}

export function writeMoment(iso: string): string {
  return moment(new Date(iso));
}

/** A day alone is the day of this place: read as UTC it would be the day before in half the world. */
export function writeDay(iso: string): string {
  return day(new Date(iso.includes("T") ? iso : `${iso}T00:00`));
}

export function writeClock(iso: string): string {
  return clock(new Date(iso));
}

/** "3 days ago". A clock that was set back must not say "in 3 days" of something past. */
export function writeAgo(iso: string, now: Date): string {
  relative ??= new Intl.RelativeTimeFormat(LOCALE, { numeric: "auto" });
  const past = Math.max(0, now.getTime() - new Date(iso).getTime());
  if (past < MINUTE_MS) return say("just_now");
  if (past < HOUR_MS) return relative.format(-Math.floor(past / MINUTE_MS), "minute");
  if (past < DAY_MS) return relative.format(-Math.floor(past / HOUR_MS), "hour");
  return relative.format(-Math.floor(past / DAY_MS), "day");
}

/** Local time with its offset, so that a stored moment keeps the wall clock that the person saw. */
export function isoWithOffset(at: Date): string {
  const offset = -at.getTimezoneOffset();
  const sign = offset < 0 ? "-" : "+";
  const two = (n: number): string => String(Math.floor(Math.abs(n))).padStart(2, "0");
  const local = new Date(at.getTime() + offset * MINUTE_MS).toISOString().slice(0, 19);
  return `${local}${sign}${two(offset / 60)}:${two(offset % 60)}`;
}

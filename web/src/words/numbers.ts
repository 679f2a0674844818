// pycore rounds and chooses the unit. Here a number only gets its decimal sign and its space.
import type { Shown } from "../core/messages";
import { countIn, decimalIn } from "./decimal";
import { isCountKey, isKey, LOCALE, say, sayCount } from "./say";

const NO_BREAK = "\u00a0";

/** Turkish writes the sign in front: the place comes from the language, not from us. */
const PERCENT_FIRST =
  new Intl.NumberFormat(LOCALE, { style: "percent" }).formatToParts(0.5)[0]?.type === "percentSign";

export const DECIMAL_SIGN =
  new Intl.NumberFormat(LOCALE).formatToParts(0.5).find((part) => part.type === "decimal")?.value ??
  ".";

export function writeDecimal(value: number, least: number, most: number): string {
  return decimalIn(LOCALE, value, least, most);
}

/** A count that stands in a sentence beside another one. */
export function writeCount(count: number): string {
  return countIn(LOCALE, count);
}

/** The number without its unit: "13 7/16", "8,5". */
export function writeNumber(shown: Shown): string {
  const parts = shown.fraction;
  if (parts === undefined) return writeDecimal(shown.value, shown.decimals, shown.decimals);
  const fraction = `${String(parts.numerator)}/${String(parts.denominator)}`;
  return parts.whole === 0 ? fraction : `${String(parts.whole)}${NO_BREAK}${fraction}`;
}

/** A unit as it stands beside a number, as this language writes it; a plain number has none. */
export function unitSign(unit: string): string {
  if (unit === "1") return "";
  const key = `unit_sign.${unit}`;
  return (isKey(key) ? say(key) : unit).replaceAll(" ", NO_BREAK);
}

/** A unit as a screen reader should say it. */
export function unitSpoken(unit: string): string {
  const key = `unit.${unit}`;
  return isKey(key) ? say(key) : unit;
}

/** Puts a unit to a written number; the two never part at the end of a line. */
export function withUnit(number: string, unit: string): string {
  const sign = unitSign(unit);
  if (sign === "") return number;
  if (sign === "%" && PERCENT_FIRST) return `${sign}${number}`;
  return `${number}${NO_BREAK}${sign}`;
}

/** "8.5 L", "13 7/16 in", "6.0 %". */
export function write(shown: Shown): string {
  return withUnit(writeNumber(shown), shown.unit);
}

/** "8.5 litres": an amount as it should sound. Half a gallon is a gallon, and so is one. */
export function writeSpoken(shown: Shown): string {
  const key = `spoken.${shown.unit}`;
  const number = writeNumber(shown);
  if (!isCountKey(key)) return `${number} ${unitSpoken(shown.unit)}`.trim();
  const isPart = shown.fraction !== undefined && shown.value < 1;
  return sayCount(key, isPart ? 1 : shown.value, { n: number });
}

const DECIMAL = /^([-−]?\d+)[.,](\d+)$/;

/**
 * A number that was typed, with the decimal sign of this language. Its value is the same in every
 * language: pycore reads a comma and a point alike, and refuses what could part thousands.
 */
function localSign(text: string): string {
  return text.replace(DECIMAL, `$1${DECIMAL_SIGN}$2`);
}

/** A number with a unit of its own, "44 cm": it wins over the one beside the field, as in pycore. */
const OWN_UNIT = /^(.*\d)\s*([\p{L}"'″′%°]\D*)$/u;

export const hasOwnUnit = (text: string): boolean => OWN_UNIT.test(text.trim());

/** What a person typed, with its unit. The digits stay as they were typed. */
export function writeTyped(typed: { text: string; unit?: string }): string {
  const text = typed.text.trim();
  const [, number, own] = OWN_UNIT.exec(text) ?? [];
  const digits = localSign(number ?? text).replaceAll(" ", NO_BREAK);
  return own === undefined
    ? withUnit(digits, typed.unit ?? "1")
    : `${digits}${NO_BREAK}${own.replaceAll(" ", NO_BREAK)}`;
}

// The digits of a number in a language, for every place that writes one.

const THIN = "\u202f";
const GROUPS_FROM = 10_000;

/** Long numbers in groups that a thin space parts: a comma or point could be read as the decimal sign. */
export function decimalIn(locale: string, value: number, least: number, most: number): string {
  return new Intl.NumberFormat(locale, {
    minimumFractionDigits: least,
    maximumFractionDigits: most,
    useGrouping: Math.abs(value) >= GROUPS_FROM,
  })
    .formatToParts(value)
    .map((part) => (part.type === "group" ? THIN : part.value))
    .join("");
}

/** A count of things. */
export const countIn = (locale: string, count: number): string => decimalIn(locale, count, 0, 3);

/** The last of the five signs is the check character; it stands behind a hyphen, as on the label. */
const FOUR = 4;

export function writeCode(code: string): string {
  return `${code.slice(0, FOUR)}-${code.slice(FOUR)}`;
}

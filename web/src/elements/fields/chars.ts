// A number that is longer than its room is written smaller, never cut: a hidden digit is another number.

/** For the style of what holds a large number: how many characters have to fit. */
export function charsOf(text: string): Record<"--chars", string> {
  return { "--chars": String(Math.max(1, text.length)) };
}

import type { Typed, Unit } from "../../core/messages";

/** The field under its name, or nothing at all where nothing was typed. */
export function given<Name extends string>(
  name: Name,
  text: string,
  unit: Unit,
): { [N in Name]?: Typed } {
  return text.trim() === "" ? {} : ({ [name]: { text, unit } } as { [N in Name]: Typed });
}

/** What was typed, for a field with this unit: one that stood in another unit says so in its text. */
export function textIn(typed: Typed | undefined, unit: Unit): string {
  if (typed === undefined) return "";
  const isPlain = /\d\s*$/.test(typed.text);
  const isOther = typed.unit !== undefined && typed.unit !== unit;
  return isPlain && isOther ? `${typed.text} ${String(typed.unit)}` : typed.text;
}

// Who says what a row of advice says. pycore names its sources in English, entries of the log keep them
// so; the page says them in its own language.
import { isKey, say } from "./say";

/** A source of pycore's tables in this language; what a shop wrote itself stays as it is. */
export function sourceWord(source: string): string {
  const name = source
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "_")
    .replace(/^_|_$/g, "");
  const key = `source_of.${name}`;
  return isKey(key) ? say(key) : source;
}

// A field of an entry in words, and what differs between two versions of its content.
import { say } from "../../words/say";
import { lookWord } from "../../words/codes";
import { writeTyped } from "../../words/numbers";
import { writeDip } from "../check/dip/level";
import { partsOf, textOf, type Content } from "./content";
import type { Field } from "./fields";

export function writeText({ kind, unit, options }: Field, text: string): string {
  if (text.trim() === "") return say("facts.not_given");
  if (kind === "looks") return partsOf(text).map(lookWord).join(", ");
  if (kind === "choice") return options.find(({ value }) => value === text)?.word ?? text;
  if (kind === "gauge") {
    const [from = "", to = ""] = text.split("|");
    const upper = to === "" ? {} : { gauge_to: { text: to, unit } };
    return writeDip({ depth: { text: from, unit }, ...upper });
  }
  return kind === "text" ? text : writeTyped({ text, unit });
}

export interface Change {
  readonly field: Field;
  readonly was: string;
  readonly now: string;
}

/** In the order of the fields; a field counts as changed when its text is another one. */
export function changesOf(
  fields: readonly Field[],
  before: Content,
  after: Content,
): readonly Change[] {
  return fields
    .map((field) => ({ field, was: textOf(before, field), now: textOf(after, field) }))
    .filter(({ was, now }) => was.trim() !== now.trim())
    .map(({ field, was, now }) => ({
      field,
      was: writeText(field, was),
      now: writeText(field, now),
    }));
}

// Everything that was typed about a reading, as rows of name and value: for the log.
import type { ReadingTyped, SecondTyped } from "../../../core/messages";
import { lineWord, methodWord } from "../../../words/codes";
import { writeTyped } from "../../../words/numbers";
import { say } from "../../../words/say";
import type { Fact } from "../../setup/facts";

export function againText(again: ReadingTyped["again"]): string {
  return (again ?? []).map(writeTyped).join(", ");
}

function secondFacts(second: SecondTyped | undefined): readonly Fact[] {
  if (second === undefined) return [];
  const { method, shows, factor } = second;
  const value = say("answers.second_value", {
    method: methodWord(method),
    shows: writeTyped(shows),
  });
  return [
    [say("answers.second"), value],
    ...(factor === undefined ? [] : [[say("answers.second_factor"), writeTyped(factor)] as const]),
  ];
}

export function readingFacts(
  { shows, how, again, temperature, diluted }: ReadingTyped,
  second: SecondTyped | undefined,
): readonly Fact[] {
  const given: readonly (Fact | null)[] = [
    [say("answers.reading"), writeTyped(shows)],
    again === undefined ? null : [say("answers.again"), againText(again)],
    diluted === undefined ? null : [say("answers.diluted"), say("answers.one_to_one")],
    temperature === undefined ? null : [say("answers.warmth"), writeTyped(temperature)],
    [say("answers.line"), how === undefined ? say("answers.missing") : lineWord(how)],
    ...secondFacts(second),
  ];
  return given.filter((fact) => fact !== null);
}

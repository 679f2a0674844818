// An entry in one line, whatever its kind.
import {
  isOfDeed,
  isWhole,
  type AnyEntry,
  type DeedEntry,
  type Entry,
} from "../../store/log/entry";
import { toldKindWord } from "../../words/codes";
import { write, writeTyped } from "../../words/numbers";
import { say, sayCount } from "../../words/say";
import { isEmpty, storedRecipe } from "../check/recipe/chosen";
import { writeDip } from "../check/dip/level";
import { partialSummary } from "../check/without/partial";
import { readingFacts } from "../check/reading/readingfacts";
import { writeCode } from "../code/written";
import type { Fact } from "../setup/facts";
import { rowsText, toldText } from "../told/sentence";

export function summary(entry: Entry): string {
  if (entry.kind !== "machine" && entry.kind !== "check") return toldText(entry);
  if (entry.kind === "machine")
    return entry.code === undefined
      ? say("log.set_up")
      : say("machine.code", { code: writeCode(entry.code) });
  if (!isWhole(entry)) return partialSummary(entry);
  const blanks = {
    dip: writeDip(entry.body.dip),
    reading: writeTyped(entry.body.reading.shows),
  };
  const recipe = storedRecipe(entry);
  const strength = entry.shown.assessment.strength?.shown.strength;
  const now = strength === undefined ? "" : write(strength);
  if (recipe === null)
    return strength === undefined
      ? say("log.no_recipe", blanks)
      : say("log.measured", { ...blanks, now });
  if (isEmpty(recipe)) return say("log.nothing", { ...blanks, now });
  const then = write(recipe.strength);
  return recipe.buckets === 0
    ? say("log.run_in", { ...blanks, now, then })
    : sayCount("log.recipe", recipe.buckets, { ...blanks, now, then });
}

function poured(rows: DeedEntry["body"] & object): string {
  if (!("pours" in rows)) return "";
  return rows.pours.length === 0 ? say("told.given_up") : rowsText(rows.pours);
}

/** What was poured or read again, as it was written down. */
export function deedFacts(deed: DeedEntry): readonly Fact[] {
  if (deed.kind === "recheck") {
    const { reading, dip, remarks } = deed.body;
    return [
      ...(dip === undefined ? [] : [[say("answers.dip"), writeDip(dip)] as const]),
      ...(reading === undefined
        ? [[deedWord(deed), say("recheck.saved_skipped")] as const]
        : readingFacts(reading, undefined)),
      ...(remarks === undefined ? [] : [[say("told.remarks"), remarks] as const]),
    ];
  }
  const { draw_off: out } = deed.body;
  const lot = deed.kind === "pour" ? deed.body.lot : undefined;
  return [
    [deedWord(deed), poured(deed.body)],
    ...(out === undefined ? [] : [[say("amend.draw_off"), writeTyped(out)] as const]),
    ...(lot === undefined ? [] : [[say("amend.lot"), lot] as const]),
  ];
}

export function deedWord({ kind }: DeedEntry): string {
  return kind === "plan" ? say("amend.plan") : toldKindWord(kind);
}

export function entryText(entry: AnyEntry): string {
  if (!isOfDeed(entry)) return summary(entry);
  return deedFacts(entry)
    .map(([, value]) => value)
    .join("; ");
}

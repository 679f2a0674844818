// The recipe of one entry on paper, with its numbers and cautions as they were shown.
import type { SlipRecipe } from "../../core/messages";
import { hasPlan, isWhole, type CheckEntry } from "../../store/log/entry";
import { entryById, load } from "../../store/log/journal";
import { isUsed } from "../../store/log/lines";
import { cautionInFull } from "../../words/codes";
import { say } from "../../words/say";
import { writeMoment } from "../../words/times";
import { Page } from "../../elements/page";
import { isEmpty, storedRecipe, type Recipe } from "../check/recipe/chosen";
import { back } from "../route";
import { SheetScreen } from "./sheet";

/** A slip lists buckets: what is run in by a hose or waited for does not stand on one. */
function fitsSlip(recipe: Recipe | null): recipe is Recipe {
  return recipe !== null && !isEmpty(recipe) && !recipe.waits && recipe.runIn === null;
}

/** None of a check that was taken back or is in doubt: on paper nobody would see that. */
export function hasSlip(check: CheckEntry): boolean {
  return isUsed(check) && fitsSlip(storedRecipe(check));
}

/** What the page says between the buckets, which a slip has no place for but among its cautions. */
function between({ halfWay, pours }: Recipe): readonly string[] {
  const stop =
    halfWay === null
      ? []
      : [say("print.half_way", { n: String(halfWay.after), minutes: String(halfWay.minutes) })];
  const isOwn = pours.some(({ fluid }) => fluid !== undefined);
  return isOwn ? [...stop, say("recipe.from_sump")] : stop;
}

function slipOf(check: CheckEntry, recipe: Recipe): SlipRecipe {
  const { level, strength } = check.shown.assessment;
  const { reading, strength: now } = strength?.shown ?? {};
  const codes = recipe.cautions.filter((code) => code !== "nothing_to_pour");
  return {
    pours: [...recipe.pours],
    strength: recipe.strength,
    low: recipe.low,
    high: recipe.high,
    volume: recipe.volume,
    cautions: [...between(recipe), ...codes.map(cautionInFull)],
    ...(level === undefined ? {} : { depth: level.shown.depth, now_volume: level.shown.volume }),
    ...(now === undefined ? {} : { now_strength: now }),
    ...(reading === undefined ? {} : { reading }),
    ...(recipe.takeOut === null ? {} : { take_out: recipe.takeOut }),
  };
}

function Missing({ onBack }: { readonly onBack: () => void }) {
  const text = load.value.kind === "reading" ? say("machines.reading") : say("print.no_slip");
  return (
    <Page title={say("print.recipe_slip")} onBack={onBack}>
      <p>{text}</p>
    </Page>
  );
}

export function SlipScreen({ id }: { readonly id: string }) {
  const entry = entryById(id);
  const onBack = (): void => {
    back("log", id);
  };
  if (entry?.kind !== "check" || !isWhole(entry) || !hasPlan(entry.shown))
    return <Missing onBack={onBack} />;
  const recipe = storedRecipe(entry);
  if (!isUsed(entry) || !fitsSlip(recipe)) return <Missing onBack={onBack} />;
  const { machine } = entry.body;
  return (
    <SheetScreen
      kind="recipe_slip"
      body={{
        kind: "recipe_slip",
        machine,
        recipe: slipOf(entry, recipe),
        when: writeMoment(entry.measured_at),
      }}
      place={machine.name}
      onBack={onBack}
    />
  );
}

// Reached only when the store has answered and the stored text was read back.
import { useEffect } from "preact/hooks";
import { MainAction, OtherAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { SectionDrawing } from "../../elements/drawings/section";
import { entryById, load } from "../../store/log/journal";
import { say } from "../../words/say";
import { writeMoment } from "../../words/times";
import { now_ms } from "../now";
import { address, replace } from "../route";
import { checkWord, dueWords } from "../tasks";
import { HeldLine } from "../told/stated";
import { hasSlip } from "../sheets/slip";
import { DeadWays } from "./look/dead";
import { isEmpty, storedRecipe, type Recipe } from "./recipe/chosen";
import { NotSaved } from "./notsaved";
import { UnmixedLine } from "./unmixed";
import { firstPlace } from "./place";
import { partialNext } from "./without/partial";
import { overtakenCheck, supersededWords } from "./pour/overtaken";
import { isBegun, pourable, useStart } from "./pour/start";
import { hasReading, isLookOnly, type CheckEntry } from "../../store/log/entry";
import { readAtOf } from "../../store/log/dueparts";
import { dueRecheck } from "../../store/log/mixing";

function nextStep({ machine }: CheckEntry, recipe: Recipe | null): string {
  if (recipe?.waits === true) return say("saved.wait");
  if (recipe === null || isEmpty(recipe)) {
    // Read before a pour had mixed, it is no all-clear.
    const due = dueRecheck(machine);
    return due === undefined ? say("saved.nothing") : dueWords(due);
  }
  return recipe.runMinutes === null
    ? say("saved.read_again")
    : say("saved.run", { minutes: String(recipe.runMinutes) });
}

/** Half a day: the sump has worked a shift since. */
const OLD_MS = 12 * 3_600_000;

/** A recipe that can still be poured, of a sump that has changed meanwhile. */
function isOld(check: CheckEntry): boolean {
  return now_ms.value - Date.parse(readAtOf(check)) > OLD_MS;
}

function Old({ check }: { readonly check: CheckEntry }) {
  const newer = overtakenCheck(check);
  if (pourable(check) === null || isBegun(check)) return null;
  if (newer === undefined && !isOld(check)) return null;
  return (
    <section class="cautions">
      <p>{newer === undefined ? say("saved.old") : supersededWords(newer)}</p>
    </section>
  );
}

/** Pouring is what comes next; whoever pours without the app goes back to the list. */
interface OnwardProps {
  readonly check: CheckEntry;
  readonly toList: () => void;
  /** Saved in order to pour: the first bucket follows at once. */
  readonly atOnce: boolean;
}

function Onward({ check, toList, atOnce }: OnwardProps) {
  const recipe = pourable(check);
  if (recipe === null || isBegun(check) || overtakenCheck(check) !== undefined)
    return (
      <MainAction rests onPress={toList}>
        {say("saved.done")}
      </MainAction>
    );
  return <ToPour check={check} recipe={recipe} toList={toList} atOnce={atOnce} />;
}

function ToPour({
  check,
  recipe,
  toList,
  atOnce,
}: OnwardProps & {
  readonly recipe: Recipe;
}) {
  const { saving, start } = useStart(check, recipe);
  useEffect(() => {
    if (!atOnce || isOld(check)) return;
    // Back from the first bucket leads to this page, and not once more to the first bucket.
    replace("machines", check.machine, "saved", check.id);
    start();
    // Once, as the page opens: afterwards the key below does it.
  }, []);
  if (isOld(check))
    return (
      <>
        <NotSaved saving={saving} />
        <OtherAction onPress={start}>{say("pour.start")}</OtherAction>
        <MainAction
          rests
          onPress={() => {
            replace("machines", check.machine, firstPlace(check.machine));
          }}
        >
          {checkWord(check.machine)}
        </MainAction>
      </>
    );
  return (
    <>
      <NotSaved saving={saving} />
      <OtherAction onPress={toList}>{say("saved.done")}</OtherAction>
      <MainAction rests onPress={start} busy={saving.kind === "saving"}>
        {say("pour.start")}
      </MainAction>
    </>
  );
}

export function SavedScreen({
  id,
  pours = false,
}: {
  readonly id: string;
  readonly pours?: boolean;
}) {
  const entry = entryById(id);
  const isMissing = load.value.kind === "ready" && entry?.kind !== "check";
  useEffect(() => {
    if (isMissing) replace();
  }, [isMissing]);
  if (entry?.kind !== "check") return null;
  const recipe = storedRecipe(entry);
  const toList = (): void => {
    replace();
  };
  return (
    <Page
      title={say("saved.title")}
      place={entry.body.machine.name}
      onBack={toList}
      stays
      action={<Onward check={entry} toList={toList} atOnce={pours} />}
    >
      <p role="status">{say("saved.when", { time: writeMoment(entry.measured_at) })}</p>
      <HeldLine machine={entry.machine} />
      <p class="saved-next">{partialNext(entry) ?? nextStep(entry, recipe)}</p>
      <Old check={entry} />
      {hasReading(entry) ? (
        <UnmixedLine machine={entry.machine} read_at={readAtOf(entry)} place={entry.place} />
      ) : null}
      {isLookOnly(entry) ? <DeadWays machine={entry.machine} /> : null}
      {recipe === null || isEmpty(recipe) ? null : (
        <SectionDrawing
          name={say("recipe.after_drawing")}
          section={recipe.after}
          fullWord={say("drawn.full")}
        />
      )}
      <div class="places">
        <PlaceLink to={address("log", entry.id)}>{say("saved.entry")}</PlaceLink>
        {hasSlip(entry) ? (
          <PlaceLink to={address("log", entry.id, "slip")}>{say("print.slip_link")}</PlaceLink>
        ) : null}
        <PlaceLink to={address("log")}>{say("log.open")}</PlaceLink>
      </div>
    </Page>
  );
}

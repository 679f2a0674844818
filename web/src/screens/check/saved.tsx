// Reached only when the store has answered and the stored text was read back.
import { useEffect } from "preact/hooks";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { SectionDrawing } from "../../elements/section";
import { hasPlan } from "../../store/entry";
import { entryById, load } from "../../store/journal";
import { say } from "../../words/say";
import { writeMoment } from "../../words/times";
import { address, replace } from "../route";
import { partialNext } from "./partial";

function nextStep(minutes: number | undefined, poured: boolean): string {
  if (!poured) return say("saved.nothing");
  return minutes === undefined
    ? say("saved.read_again")
    : say("saved.run", { minutes: String(minutes) });
}

export function SavedScreen({ id }: { readonly id: string }) {
  const entry = entryById(id);
  const isMissing = load.value.kind === "ready" && entry?.kind !== "check";
  useEffect(() => {
    if (isMissing) replace();
  }, [isMissing]);
  if (entry?.kind !== "check") return null;
  const plan = hasPlan(entry.shown) ? entry.shown.plan : null;
  const minutes = plan?.steps.find((step) => step.kind === "run")?.minutes;
  const toList = (): void => {
    replace();
  };
  return (
    <Page
      title={say("saved.title")}
      place={entry.body.machine.name}
      onBack={toList}
      action={<MainAction onPress={toList}>{say("saved.done")}</MainAction>}
    >
      <p role="status">{say("saved.when", { time: writeMoment(entry.measured_at) })}</p>
      <p class="saved-next">
        {partialNext(entry) ?? nextStep(minutes, plan !== null && plan.pours.length > 0)}
      </p>
      {hasPlan(entry.shown) && entry.shown.plan.pours.length > 0 ? (
        <SectionDrawing
          name={say("recipe.after_drawing")}
          section={entry.shown.after}
          fullWord={say("drawn.full")}
        />
      ) : null}
      <div class="places">
        <PlaceLink to={address("log", entry.id)}>{say("saved.entry")}</PlaceLink>
        <PlaceLink to={address("log")}>{say("log.open")}</PlaceLink>
      </div>
    </Page>
  );
}

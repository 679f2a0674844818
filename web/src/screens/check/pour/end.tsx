// All is in: run the pump, and the time of the second reading. Nothing is in the log until Save.
import { MainAction } from "../../../elements/buttons";
import { Page } from "../../../elements/page";
import { SectionDrawing } from "../../../elements/drawings/section";
import { USUAL_MIXING_MIN } from "../../../store/log/mixing";
import { changePouring } from "../../../store/underway/pouring";
import { say } from "../../../words/say";
import { timeOf } from "../../now";
import { back } from "../../route";
import type { Recipe } from "../recipe/chosen";
import { NotSaved, saveWord } from "../notsaved";
import { dueAt, useFinish } from "./finish";
import type { PourProps } from "./screen";
import { isOut, pouredRows, undone } from "./steps";

export function runMinutes({ runMinutes: minutes }: Recipe): number {
  return minutes ?? USUAL_MIXING_MIN;
}

/** Save, with Undo beside it as at every tick. */
function Saving({ machine, pouring, recipe, steps }: PourProps) {
  const { saving, finish } = useFinish(machine, pouring);
  const { ticks, logged } = pouring;
  const press = (): void => {
    finish({
      rows: pouredRows(recipe, steps, ticks, logged),
      out: isOut(steps, ticks, logged) ? pouring.plan.body.draw_off : undefined,
      finished: true,
      ticks,
      evenly: true,
      isIn: pouredRows(recipe, steps, ticks, 0).length > 0,
      minutes: runMinutes(recipe),
    });
  };
  return (
    <>
      <NotSaved saving={saving} />
      <div class="tick-row">
        <button
          type="button"
          class="undo"
          onClick={() => {
            changePouring(machine.machine, { ticks: undone(ticks) });
          }}
        >
          {say("pour.undo")}
        </button>
        <MainAction onPress={press} busy={saving.kind === "saving"}>
          {saveWord(saving)}
        </MainAction>
      </div>
    </>
  );
}

export function EndScreen(props: PourProps) {
  const { machine, pouring, recipe } = props;
  const minutes = runMinutes(recipe);
  const last = pouring.ticks.at(-1)?.at ?? pouring.plan.measured_at;
  return (
    <Page
      title={say("pour.all_in")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", machine.machine);
      }}
      action={<Saving {...props} />}
    >
      <SectionDrawing
        name={say("recipe.after_drawing")}
        section={recipe.after}
        fullWord={say("drawn.full")}
      />
      <p class="saved-next" role="status">
        {say("pour.run_pump", { minutes: String(minutes) })}
      </p>
      <p class="plain-lead">{say("recheck.due", { time: timeOf(dueAt(last, minutes)) })}</p>
      <p class="note">{say("recheck.no_alarm")}</p>
    </Page>
  );
}

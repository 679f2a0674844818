// Before a clean-out: what the log says about it, what is open here, and one that was stopped before its end.
import { MainAction, OtherAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { beginCleaning } from "../../store/underway/cleaning";
import type { MachineEntry } from "../../store/log/entry";
import { heldOf } from "../../store/log/machines";
import { say } from "../../words/say";
import { address, back, go } from "../route";
import { pouringWords } from "../tasks";
import { HeldLine } from "../told/stated";
import { useTrend } from "../trend/asked";
import { cleanOutSentences } from "../trend/sentences";
import { resumedFrom, stoppedAt } from "./stopped";
import { CleaningTask } from "./underway";

interface BeginProps {
  readonly machine: MachineEntry;
}

/** One that was stopped goes on first: what it had reached need not be done again. */
function Actions({ machine }: BeginProps) {
  const id = machine.machine;
  const stopped = stoppedAt(id);
  const begin = (): void => {
    if (heldOf(id) === undefined) beginCleaning(id);
    else go("machines", id, "clean-out", "begin");
  };
  if (stopped === undefined) return <MainAction onPress={begin}>{say("clean.begin")}</MainAction>;
  return (
    <>
      <OtherAction onPress={begin}>{say("clean.anew")}</OtherAction>
      <MainAction
        onPress={() => {
          if (heldOf(id) === undefined) beginCleaning(id, resumedFrom(stopped, machine));
          else go("machines", id, "clean-out", "begin", "on");
        }}
      >
        {say("clean.go_on_stopped")}
      </MainAction>
    </>
  );
}

/** What goes in after the sump was emptied would be of an old recipe. */
function OpenPour({ machine }: BeginProps) {
  const words = pouringWords(machine.machine);
  if (words === null) return null;
  return (
    <section class="task">
      <h2>{words}</h2>
      <p>{say("clean.pour_open")}</p>
      <PlaceLink to={address("machines", machine.machine, "pour")}>
        {say("clean.to_pour")}
      </PlaceLink>
    </section>
  );
}

export function Begin({ machine }: BeginProps) {
  const id = machine.machine;
  const trend = useTrend(id, null);
  return (
    <Page
      title={say("clean.title")}
      place={machine.body.machine.name}
      stays
      onBack={() => {
        back("machines", id);
      }}
      action={<Actions machine={machine} />}
    >
      <HeldLine machine={id} />
      <CleaningTask machine={id} />
      {stoppedAt(id)?.body.steps?.some(({ state }) => state === "locked") === true ? (
        <p class="plain-lead">{say("clean.lock_again")}</p>
      ) : null}
      <OpenPour machine={machine} />
      <p>{say("clean.what")}</p>
      <p>{say("clean.for_whom")}</p>
      {trend?.kind === "ok" ? (
        <ul class="facts">
          {cleanOutSentences(trend.result).map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      ) : null}
      <PlaceLink to={address("machines", id, "trend")}>{say("trend.title")}</PlaceLink>
    </Page>
  );
}

// Clean-out and new charge: where it begins, the step that comes next, stopping, and the end.
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { beginCleaning, cleaningOf } from "../../store/underway/cleaning";
import type { MachineEntry } from "../../store/log/entry";
import { say } from "../../words/say";
import { heldOf } from "../../store/log/machines";
import { address, back, go, replace } from "../route";
import { HeldLine } from "../told/stated";
import { useTrend } from "../trend/asked";
import { cleanOutSentences } from "../trend/sentences";
import { FirstScreen } from "./first";
import { STEPS } from "./steps";
import { StopScreen } from "./stop";
import { BeginHeld } from "./tag";
import { CleanTickScreen } from "./tick";

/** What the log says about it, before anybody begins. */
function Begin({ machine }: { readonly machine: MachineEntry }) {
  const trend = useTrend(machine.machine, null);
  const held = heldOf(machine.machine);
  return (
    <Page
      title={say("clean.title")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", machine.machine);
      }}
      action={
        <MainAction
          onPress={() => {
            if (held === undefined) beginCleaning(machine.machine);
            else go("machines", machine.machine, "clean-out", "begin");
          }}
        >
          {say("clean.begin")}
        </MainAction>
      }
    >
      <HeldLine machine={machine.machine} />
      <p>{say("clean.what")}</p>
      <p>{say("clean.for_whom")}</p>
      {trend?.kind === "ok" ? (
        <ul class="facts">
          {cleanOutSentences(trend.result).map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      ) : null}
      <PlaceLink to={address("machines", machine.machine, "trend")}>{say("trend.title")}</PlaceLink>
    </Page>
  );
}

function Done({ machine }: { readonly machine: MachineEntry }) {
  const onward = (): void => {
    replace("machines", machine.machine);
  };
  return (
    <Page
      title={say("clean.done")}
      place={machine.body.machine.name}
      onBack={onward}
      action={<MainAction onPress={onward}>{say("tell.done")}</MainAction>}
    >
      <p role="status">{say("clean.done_text")}</p>
      <HeldLine machine={machine.machine} />
      <PlaceLink to={address("machines", machine.machine, "trend")}>{say("trend.title")}</PlaceLink>
    </Page>
  );
}

export function CleanOutScreen({
  machine,
  parts,
}: {
  readonly machine: MachineEntry;
  readonly parts: readonly string[];
}) {
  const cleaning = cleaningOf(machine.machine).value;
  const held = heldOf(machine.machine);
  if (parts[0] === "done" && cleaning === null) return <Done machine={machine} />;
  if (cleaning === null && parts[0] === "begin" && held !== undefined)
    return <BeginHeld machine={machine} held={held} />;
  if (cleaning === null) return <Begin machine={machine} />;
  if (parts[0] === "stop") return <StopScreen machine={machine} cleaning={cleaning} />;
  const step = STEPS[cleaning.ticks.length];
  return step === undefined ? (
    <FirstScreen machine={machine} cleaning={cleaning} />
  ) : (
    <CleanTickScreen key={step.state} machine={machine} cleaning={cleaning} step={step} />
  );
}

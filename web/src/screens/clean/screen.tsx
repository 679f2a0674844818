// Clean-out and new charge: the step that comes next, stopping, and the end.
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { cleaningOf, type Cleaning } from "../../store/underway/cleaning";
import type { MachineEntry } from "../../store/log/entry";
import { say } from "../../words/say";
import { heldOf } from "../../store/log/machines";
import { address, replace } from "../route";
import { HeldLine } from "../told/stated";
import { Begin } from "./begin";
import { FirstScreen } from "./first";
import { STEPS } from "./steps";
import { StopScreen } from "./stop";
import { resumedFrom, stoppedAt } from "./stopped";
import { BeginHeld } from "./tag";
import { CleanTickScreen } from "./tick";

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

/** Where one goes on that was stopped. */
function fromOf(machine: MachineEntry, part: string | undefined): Partial<Cleaning> {
  const stopped = part === "on" ? stoppedAt(machine.machine) : undefined;
  return stopped === undefined ? {} : resumedFrom(stopped, machine);
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
    return <BeginHeld machine={machine} held={held} from={fromOf(machine, parts[1])} />;
  if (cleaning === null) return <Begin machine={machine} />;
  if (parts[0] === "stop") return <StopScreen machine={machine} cleaning={cleaning} />;
  const step = STEPS[cleaning.ticks.length];
  return step === undefined ? (
    <FirstScreen machine={machine} cleaning={cleaning} />
  ) : (
    <CleanTickScreen key={step.state} machine={machine} cleaning={cleaning} step={step} />
  );
}

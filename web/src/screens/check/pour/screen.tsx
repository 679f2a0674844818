// Pouring a saved recipe: which page stands there now, from the ticks that are kept.
import type { VNode } from "preact";
import { useEffect } from "preact/hooks";
import type { MachineEntry } from "../../../store/log/entry";
import { entryById, load, opened } from "../../../store/log/journal";
import { isInterrupted, pouringOf, type Pouring } from "../../../store/underway/pouring";
import { replace } from "../../route";
import type { Recipe } from "../recipe/chosen";
import { DoneScreen } from "./done";
import { EndScreen } from "./end";
import { overtakenAt } from "./overtaken";
import { OvertakenScreen, ResumeScreen } from "./resume";
import { pourable } from "./start";
import { pourSteps, type Step } from "./steps";
import { StopScreen } from "./stop";
import { TickScreen } from "./tick";

export interface PourProps {
  readonly machine: MachineEntry;
  readonly pouring: Pouring;
  readonly recipe: Recipe;
  readonly steps: readonly Step[];
}

function Leave({ id }: { readonly id: string }) {
  useEffect(() => {
    replace("machines", id);
  }, [id]);
  return null;
}

interface ScreenProps {
  readonly machine: MachineEntry;
  readonly parts: readonly string[];
}

function screenOf(props: PourProps, place: string | undefined): VNode {
  if (place === "stop") return <StopScreen {...props} />;
  // Nothing is left that could have been poured without a tick.
  if (props.pouring.ticks.length >= props.steps.length) return <EndScreen {...props} />;
  if (overtakenAt(props.machine.machine, props.steps.length) !== undefined)
    return <OvertakenScreen {...props} />;
  return isInterrupted(props.machine.machine) ? (
    <ResumeScreen {...props} />
  ) : (
    <TickScreen {...props} />
  );
}

export function PourScreen({ machine, parts }: ScreenProps) {
  const [place, id] = parts;
  const pouring = pouringOf(machine.machine).value;
  if (opened.value.kind === "reading") return null;
  if (place === "done" && id !== undefined) return <DoneScreen machine={machine} id={id} />;
  const check = pouring === null ? undefined : entryById(pouring.check);
  const recipe = check?.kind === "check" ? pourable(check) : null;
  if (pouring !== null && check === undefined && load.value.kind === "reading") return null;
  if (pouring === null || recipe === null) return <Leave id={machine.machine} />;
  return screenOf({ machine, pouring, recipe, steps: pourSteps(recipe) }, place);
}

// The second reading after a pour: the pages of the reading, the dip where somebody takes it, and then
// expected against found. It has a draft of its own, beside the one of an ordinary check.
import type { VNode } from "preact";
import { useEffect } from "preact/hooks";
import type { CheckEntry, MachineEntry, PourEntry } from "../../../store/log/entry";
import { deedById, entryById, load, opened } from "../../../store/log/journal";
import { dueRecheck } from "../../../store/log/mixing";
import { changeWalk, endWalk, walkOf, type Walk } from "../../../store/underway/walk";
import { say } from "../../../words/say";
import { timeOf } from "../../now";
import { back, go, replace } from "../../route";
import { DipScreen } from "../dip/dip";
import { CleanSideScreen } from "../dip/cleanside";
import { dipSteps } from "../dip/level";
import { LineScreen } from "../reading/line";
import { ReadingScreen } from "../reading/reading";
import { kindOf, type CheckProps } from "../steps";
import { TouchedScreen } from "../dip/touched";
import { WarmthScreen } from "../reading/warmth";
import { DoneScreen } from "./done";
import { ResultScreen } from "./result";
import { SkipScreen } from "./skip";

const SCREENS: Readonly<Record<string, (props: CheckProps) => VNode>> = {
  reading: ReadingScreen,
  warmth: WarmthScreen,
  line: LineScreen,
  dip: DipScreen,
  clean_side: CleanSideScreen,
  touched: TouchedScreen,
};

/** The draft of a machine's second reading stands under a name of its own. */
export const draftOf = (machine: string): string => `again.${machine}`;

export interface RecheckProps {
  readonly machine: MachineEntry;
  readonly pour: PourEntry;
  /** The check whose recipe was poured. */
  readonly check: CheckEntry;
  readonly walk: Walk;
}

/** The second reading comes with what was just poured: nothing is asked about. */
const NOTHING_SINCE = { found: null, isOpen: false, isReadingOpen: false };

function Leave({ id }: { readonly id: string }) {
  useEffect(() => {
    replace("machines", id);
  }, [id]);
  return null;
}

/** The check that a pour goes back to; it may have come from another phone and not be here. */
function checkOfPour(pour: PourEntry): CheckEntry | undefined {
  const plan = deedById(pour.body.plan);
  const check = plan?.kind === "plan" ? entryById(plan.body.check) : undefined;
  return check?.kind === "check" ? check : undefined;
}

function Asking({ props, place }: { readonly props: RecheckProps; readonly place: string }) {
  const { machine, pour, walk } = props;
  const id = machine.machine;
  const typed = machine.body.machine;
  const isDip = place === "dip" || place === "clean_side" || place === "touched";
  const reading = ["reading", ...(kindOf(typed).asksWarmth ? ["warmth"] : []), "line"];
  const order: readonly string[] = isDip ? dipSteps(typed) : reading;
  const after = order[order.indexOf(place) + 1] ?? "result";
  const Screen = SCREENS[place] ?? ReadingScreen;
  const last = pour.measured_at;
  const next = (): void => {
    go("machines", id, "recheck", after);
  };
  return (
    <Screen
      key={place}
      machine={machine}
      walk={walk}
      beside
      since={NOTHING_SINCE}
      pass={next}
      next={next}
      rest={[]}
      step={say("recheck.step", { time: timeOf(last) })}
      change={(change) => {
        changeWalk(draftOf(id), change);
      }}
      onBack={() => {
        back("machines", id);
      }}
    />
  );
}

/** Typed for a pour before this one and never saved: its digits say nothing of what was poured since. */
function useOwnDraft(id: string, pour: PourEntry | undefined): void {
  useEffect(() => {
    const { at } = walkOf(draftOf(id)).value;
    const poured_ms = Date.parse(pour?.measured_at ?? "");
    if (Date.parse(at) < poured_ms && poured_ms <= Date.now()) endWalk(draftOf(id));
  }, [id, pour?.id]);
}

interface ScreenProps {
  readonly machine: MachineEntry;
  readonly parts: readonly string[];
}

export function RecheckScreen({ machine, parts }: ScreenProps) {
  const [place = "reading", saved] = parts;
  const id = machine.machine;
  const pour = dueRecheck(id)?.pour;
  useOwnDraft(id, pour);
  if (opened.value.kind === "reading") return null;
  if (place === "done" && saved !== undefined) return <DoneScreen machine={machine} id={saved} />;
  const check = pour === undefined ? undefined : checkOfPour(pour);
  if (pour === undefined) return <Leave id={id} />;
  if (place === "skip") return <SkipScreen machine={machine} pour={pour} />;
  if (check === undefined) return load.value.kind === "reading" ? null : <Leave id={id} />;
  const props = { machine, pour, check, walk: walkOf(draftOf(id)).value };
  if (place === "result") return <ResultScreen {...props} />;
  return <Asking props={props} place={place} />;
}

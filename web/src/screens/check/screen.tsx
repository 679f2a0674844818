// Leads through the check: which question is open, what comes next, where Change returns to.
import type { VNode } from "preact";
import { useEffect } from "preact/hooks";
import { TopAside } from "../../elements/page";
import type { MachineEntry } from "../../store/log/entry";
import { changeWalk, isStarted, walkOf } from "../../store/underway/walk";
import { back, go, replace } from "../route";
import { AgainScreen } from "./reading/again";
import { AnswersScreen } from "./answers";
import { BlurredScreen } from "./reading/blurred";
import { CleanSideScreen } from "./dip/cleanside";
import { CompactScreen } from "./compact/screen";
import { DipScreen } from "./dip/dip";
import { FillScreen } from "./dip/fill";
import { HoldingScreen } from "./without/holding";
import { LineScreen } from "./reading/line";
import { ToOneScreen } from "./modeswitch";
import { ALL } from "./place";
import { isSinceAsked, useLevelChange, type LevelChange, type Typing } from "./lookback";
import { ReadingScreen } from "./reading/reading";
import { RecipeScreen } from "./recipe/recipe";
import { SavedScreen } from "./saved";
import { SecondScreen } from "./reading/second";
import { SinceScreen } from "./since";
import { StateScreen } from "./without/state";
import {
  isCheckStep,
  kindOf,
  missingBefore,
  nextOf,
  returnOf,
  stepsOf,
  stepWords,
  type CheckProps,
  type CheckStep,
} from "./steps";
import { StockScreen } from "./stock";
import { TargetScreen } from "./target";
import { TouchedScreen } from "./dip/touched";
import { UsualScreen } from "./without/usual";
import { WarmthScreen } from "./reading/warmth";
import { ZeroScreen } from "./reading/zero";

const SCREENS: Readonly<Record<CheckStep, (props: CheckProps) => VNode>> = {
  dip: DipScreen,
  clean_side: CleanSideScreen,
  touched: TouchedScreen,
  since: SinceScreen,
  reading: ReadingScreen,
  line: LineScreen,
  target: TargetScreen,
  answers: AnswersScreen,
  recipe: RecipeScreen,
  stock: StockScreen,
  fill: FillScreen,
  holding: HoldingScreen,
  usual: UsualScreen,
  state: StateScreen,
  warmth: WarmthScreen,
  again: AgainScreen,
  blurred: BlurredScreen,
  second: SecondScreen,
  zero: ZeroScreen,
};

interface ScreenProps {
  readonly machine: MachineEntry;
  readonly parts: readonly string[];
}

/**
 * A place of a check that does not exist, or of one that is over, leads to its machine; one that
 * needs a measurement leads to the page where it is typed.
 */
function Leave({ id, step }: { readonly id: string; readonly step?: CheckStep }) {
  useEffect(() => {
    replace("machines", id, ...(step === undefined ? [] : [step]));
  }, [id, step]);
  return null;
}

function changesOf(id: string): Pick<CheckProps, "change" | "onBack"> {
  return {
    change: (change) => {
      changeWalk(id, change);
    },
    onBack: () => {
      back("machines", id);
    },
  };
}

function OneScreen({ machine, walk, since }: Pick<CheckProps, "machine" | "walk" | "since">) {
  return (
    <CompactScreen
      machine={machine}
      walk={walk}
      since={since}
      next={() => undefined}
      pass={() => undefined}
      rest={[]}
      step=""
      {...changesOf(machine.machine)}
    />
  );
}

/** Read anew: the answer that was just given may have changed the walk. */
function onward(machine: MachineEntry, from: CheckStep, since: LevelChange, to: typeof go): void {
  const id = machine.machine;
  const typed = machine.body.machine;
  const order = stepsOf(walkOf(id).value.order, kindOf(typed), typed);
  const after = nextOf(from, order, since.isOpen || isSinceAsked(since.found));
  if (after !== undefined) to("machines", id, after);
}

function typingAt(place: string | undefined): Typing {
  if (place === ALL) return "both";
  if (place === "reading") return place;
  return place === "dip" || place === "clean_side" ? "dip" : null;
}

export function CheckScreen({ machine, parts }: ScreenProps) {
  const [first, ...rest] = parts;
  const [second] = rest;
  const id = machine.machine;
  const walk = walkOf(id).value;
  const kind = kindOf(machine.body.machine);
  const since = useLevelChange(machine, walk, typingAt(first));
  const steps = stepsOf(walk.order, kind, machine.body.machine);
  if (first === "saved" && second !== undefined) {
    return <SavedScreen id={second} pours={rest[1] === "pour"} />;
  }
  if (first === ALL) return <OneScreen machine={machine} walk={walk} since={since} />;
  const isEntrance =
    first === "dip" || first === "reading" || first === "zero" || first === "since";
  if (!isCheckStep(first, steps) || (!isEntrance && !isStarted(walk))) return <Leave id={id} />;
  const missing = missingBefore(first, walk);
  if (missing !== null) return <Leave id={id} step={missing} />;
  const leave = (to: typeof go): void => {
    if (second === "look" || second === "change")
      back("machines", id, second === "look" ? second : returnOf(first));
    else onward(machine, first, since, to);
  };
  const Screen = SCREENS[first];
  return (
    <TopAside.Provider value={<ToOneScreen machine={machine} />}>
      <Screen
        key={first}
        machine={machine}
        walk={walk}
        next={() => {
          leave(go);
        }}
        pass={() => {
          leave(replace);
        }}
        rest={rest}
        since={since}
        step={stepWords(first, walk.order, kind)}
        {...changesOf(id)}
      />
    </TopAside.Provider>
  );
}

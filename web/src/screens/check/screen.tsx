// Leads through the check: which question is open, what comes next, where Change returns to.
import type { VNode } from "preact";
import { useEffect } from "preact/hooks";
import { TopAside } from "../../elements/page";
import type { MachineEntry } from "../../store/entry";
import { changeWalk, isStarted, walkOf } from "../../store/walk";
import { back, go, replace } from "../route";
import { AgainScreen } from "./again";
import { AnswersScreen } from "./answers";
import { BlurredScreen } from "./blurred";
import { CleanSideScreen } from "./cleanside";
import { CompactScreen } from "./compact/screen";
import { DipScreen } from "./dip";
import { FillScreen } from "./fill";
import { HoldingScreen } from "./holding";
import { LineScreen } from "./line";
import { ToOneScreen } from "./modeswitch";
import { ALL } from "./place";
import { ReadingScreen } from "./reading";
import { RecipeScreen } from "./recipe";
import { SavedScreen } from "./saved";
import { SecondScreen } from "./second";
import { StateScreen } from "./state";
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
import { TouchedScreen } from "./touched";
import { UsualScreen } from "./usual";
import { WarmthScreen } from "./warmth";
import { ZeroScreen } from "./zero";

const SCREENS: Readonly<Record<CheckStep, (props: CheckProps) => VNode>> = {
  dip: DipScreen,
  clean_side: CleanSideScreen,
  touched: TouchedScreen,
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

function OneScreen({ machine, walk }: Pick<CheckProps, "machine" | "walk">) {
  return (
    <CompactScreen
      machine={machine}
      walk={walk}
      next={() => undefined}
      rest={[]}
      step=""
      {...changesOf(machine.machine)}
    />
  );
}

export function CheckScreen({ machine, parts }: ScreenProps) {
  const [first, ...rest] = parts;
  const [second] = rest;
  const id = machine.machine;
  const walk = walkOf(id).value;
  const kind = kindOf(machine.body.machine);
  const steps = stepsOf(walk.order, kind, machine.body.machine);
  if (first === "saved" && second !== undefined) {
    return <SavedScreen id={second} pours={rest[1] === "pour"} />;
  }
  if (first === ALL) return <OneScreen machine={machine} walk={walk} />;
  const isEntrance = first === "dip" || first === "reading" || first === "zero";
  if (!isCheckStep(first, steps) || (!isEntrance && !isStarted(walk))) return <Leave id={id} />;
  const missing = missingBefore(first, walk);
  if (missing !== null) return <Leave id={id} step={missing} />;
  const next = (): void => {
    if (second === "change") {
      back("machines", id, returnOf(first));
      return;
    }
    // Read anew: the answer that was just given may have changed the walk.
    const order = stepsOf(walkOf(id).value.order, kind, machine.body.machine);
    const after = nextOf(first, order);
    if (after !== undefined) go("machines", id, after);
  };
  const Screen = SCREENS[first];
  return (
    <TopAside.Provider value={<ToOneScreen machine={machine} />}>
      <Screen
        key={first}
        machine={machine}
        walk={walk}
        next={next}
        rest={rest}
        step={stepWords(first, walk.order, kind)}
        {...changesOf(id)}
      />
    </TopAside.Provider>
  );
}

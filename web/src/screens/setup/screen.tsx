// Leads through the set-up; the draft is kept at every change, so that Back and a reload lose nothing.
import { useEffect, useMemo } from "preact/hooks";
import type { VNode } from "preact";
import type { MachineEntry } from "../../store/log/entry";
import type { SetupStep } from "../../words/fields";
import { say } from "../../words/say";
import { address, back, backOver, go, replace } from "../route";
import { AllowStep } from "./shop/allow";
import { BatchStep } from "./fluid/batch";
import { BucketStep } from "./shop/bucket";
import { CheckStep } from "./check";
import { DippingStep } from "./tank/dipping";
import { DrumStep } from "./fluid/drum";
import { ENTER } from "./enter";
import { FactorStep } from "./fluid/factor";
import { FactorSourceStep } from "./fluid/factorsource";
import { FluidStep } from "./fluid/fluid";
import { openChoice, type Form } from "./form";
import { FoundStep } from "./jugs/found";
import { HiddenStep } from "./tank/hidden";
import { InstrumentStep } from "./fluid/instrument";
import { JugsStep } from "./jugs/jugspage";
import { LimitsStep } from "./shop/limits";
import { LitresStep } from "./tank/litres";
import { MetalsStep } from "./fluid/metals";
import { MixesStep } from "./jugs/mixes";
import { NameStep } from "./name";
import { changeForm, endForm, formFor } from "./openforms";
import { PourHereStep } from "./shop/pourhere";
import { PailStep } from "./shop/pail";
import { PouringStep } from "./pourtest/pouring";
import { PoursStep } from "./pourtest/pours";
import { RimStep } from "./tank/rim";
import { SheetStep } from "./fluid/sheet";
import { SizeStep } from "./tank/size";
import { SourceStep } from "./tank/source";
import { afterOf, countOf, isSetupStep, stepsFor, type SetupProps } from "./steps";
import { TargetStep } from "./shop/target";
import { ThingsStep } from "./tank/thingspage";
import { UnitsStep } from "./shop/unitspage";
import { WaterStep } from "./fluid/water";
import { ZeroStep } from "./fluid/zero";

const SCREENS: Readonly<Record<Exclude<SetupStep, "check">, (props: SetupProps) => VNode>> = {
  name: NameStep,
  units: UnitsStep,
  litres: LitresStep,
  size: SizeStep,
  source: SourceStep,
  drum: DrumStep,
  factor_source: FactorSourceStep,
  rim: RimStep,
  fluid: FluidStep,
  factor: FactorStep,
  target: TargetStep,
  limits: LimitsStep,
  bucket: BucketStep,
  things: ThingsStep,
  hidden: HiddenStep,
  dipping: DippingStep,
  pours: PoursStep,
  pouring: PouringStep,
  instrument: InstrumentStep,
  zero: ZeroStep,
  metals: MetalsStep,
  sheet: SheetStep,
  batch: BatchStep,
  water: WaterStep,
  jugs: JugsStep,
  mixes: MixesStep,
  found: FoundStep,
  pour_here: PourHereStep,
  pail: PailStep,
  allow: AllowStep,
};

function Leave({ to }: { readonly to: readonly string[] }) {
  useEffect(() => {
    replace(...to);
  }, [to]);
  return null;
}

function numberOf(step: SetupStep): string | undefined {
  const count = countOf(step);
  return count && say("step.of", { n: String(count.n), total: String(count.total) });
}

/** To the question after this one, along the way aside, or back to where Change was pressed. */
function goOn(
  form: Form,
  step: SetupStep,
  isNew: boolean,
  base: readonly string[],
  rest: readonly string[],
): void {
  const steps = stepsFor(form);
  const at = steps.indexOf(step);
  const after = at < 0 ? "check" : steps[at + 1];
  const isChange = rest[0] === "change";
  const aside = afterOf(step, isNew && !isChange);
  if (aside !== undefined) go(...base, aside, ...rest);
  else if (rest[0] === ENTER) {
    const open = openChoice(form);
    if (open === null || open === step) go(...base, "check");
    else go(...base, open, ENTER);
  } else if (isChange) back(...base, "check");
  else if (after !== undefined) go(...base, after);
}

interface ScreenProps {
  /** Null while a new machine is set up. */
  readonly machine: MachineEntry | null;
  readonly parts: readonly string[];
}

export function SetupScreen({ machine, parts }: ScreenProps) {
  const key = machine?.machine ?? "new";
  const stored = useMemo(() => formFor(key, machine), [key, machine]);
  const form = stored.value;
  const base = machine === null ? ["machines", "new"] : ["machines", machine.machine, "set-up"];
  const home = machine === null ? [] : ["machines", machine.machine];
  const [first, ...rest] = parts;
  const isOver = machine === null && form.name === "" && first !== "name";
  if (!isSetupStep(first) || isOver) return <Leave to={home} />;
  const change = (part: Partial<Form>): void => {
    changeForm(key, stored, part);
  };
  const next = (): void => {
    goOn(stored.value, first, machine === null, base, rest);
  };
  const step = numberOf(first);
  const props: SetupProps = {
    form,
    change,
    next,
    step,
    onBack: () => {
      back(...home);
    },
    to: (other) => address(...base, other, ...rest),
    backOver: (pages, other) => {
      backOver(pages, ...base, other, ...rest);
    },
    place: form.name.trim() === "" ? say("setup.new") : form.name,
  };
  if (first === "check")
    return (
      <CheckStep
        key="check"
        {...props}
        base={base}
        onSaved={() => {
          endForm(key);
        }}
      />
    );
  const Screen = SCREENS[first];
  return <Screen key={first} {...props} />;
}

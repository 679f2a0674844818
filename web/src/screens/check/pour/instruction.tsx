// What to do now, and in small what comes then.
import { Amount } from "../../../elements/amount";
import { PourHere } from "../../../elements/drawings/pourhere";
import { PourBucket } from "../../../elements/pourrow";
import type { MachineEntry } from "../../../store/log/entry";
import { noteSentence } from "../../../words/codes";
import { write, writeSpoken } from "../../../words/numbers";
import { say } from "../../../words/say";
import { amountsOf } from "../recipe/amounts";
import { concentrateBy } from "../recipe/pours";
import type { Step } from "./steps";

/** Said once, before anything is lifted. */
function readyLines(machine: MachineEntry): readonly string[] {
  const { fluid } = machine.body.machine;
  const name = fluid.name?.trim() ?? "";
  return [
    ...(fluid.metals?.includes("magnesium") === true ? [noteSentence("magnesium")] : []),
    name === "" ? say("pour.drum_unknown") : say("pour.drum", { name }),
    say("pour.gloves"),
    say("pour.still"),
    say("pour.where"),
    say("pour.count"),
    say("recipe.sheet"),
  ];
}

/** The machine's own line, or the rule that holds for every sump. */
function placeLine({ body }: MachineEntry): string {
  const { pour_here: place } = body.machine;
  return place === undefined ? say("pour.where") : say("pour.here", { place });
}

function Picture({ machine }: { readonly machine: MachineEntry }) {
  return <PourHere divided={machine.body.machine.sump.divided === true} />;
}

function Ready({ machine }: { readonly machine: MachineEntry }) {
  const { pour_here: place } = machine.body.machine;
  return (
    <>
      <ul class="ready-list">
        {place === undefined ? null : <li class="pour-here">{placeLine(machine)}</li>}
        {readyLines(machine).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <Picture machine={machine} />
    </>
  );
}

const AMOUNT_WORDS = {
  out: "amount.take_out",
  run_in: "amount.hose",
  water: "amount.water",
  fluid: "amount.own_fluid",
  ready_mix: "amount.ready_mix",
  concentrate: "amount.concentrate",
} as const;

function hasAmount(state: Step["state"]): state is keyof typeof AMOUNT_WORDS {
  return state in AMOUNT_WORDS;
}

function sentence(step: Step, machine: MachineEntry): string {
  const { state, minutes } = step;
  if (state === "run") return say("pour.do.run", { minutes: String(minutes ?? 0) });
  // A synthetic one stays clear: it would never look milky.
  if (state === "stirred" && machine.body.machine.fluid.type === "synthetic")
    return say("pour.do.stirred_clear");
  return state === "ready" ? "" : say(`pour.do.${state}`);
}

function Lumps() {
  return (
    <details class="lumps">
      <summary>{say("pour.lumpy")}</summary>
      <p>{say("pour.lumpy_do")}</p>
    </details>
  );
}

interface InstructionProps {
  readonly step: Step;
  readonly machine: MachineEntry;
  readonly quick: boolean;
}

function Quick({ pour, machine }: Pick<Step, "pour"> & Pick<InstructionProps, "machine">) {
  if (pour === null) return null;
  return (
    <div class="instruction-words">
      <p class="instruction-lead">{amountsOf(pour)}</p>
      <p>{say("pour.do.quick")}</p>
      <p class="pour-place-line">{placeLine(machine)}</p>
      {pour.concentrate.value > 0 ? <p>{concentrateBy(pour)}</p> : null}
      <Lumps />
    </div>
  );
}

/** Tipped in now: where, in the words of this machine, and as a picture. */
function Poured({ step, machine }: Pick<InstructionProps, "step" | "machine">) {
  return (
    <>
      <div class="instruction-words">
        <p class="instruction-lead">{sentence(step, machine)}</p>
        <p class="pour-place-line">{placeLine(machine)}</p>
      </div>
      <Picture machine={machine} />
    </>
  );
}

export function Instruction({ step, machine, quick }: InstructionProps) {
  const { state, amount, pour } = step;
  if (state === "ready") return <Ready machine={machine} />;
  if (quick && step.bucket !== null) return <Quick pour={step.pour} machine={machine} />;
  if (state === "poured") return <Poured step={step} machine={machine} />;
  const jugs = state === "concentrate" && pour !== null ? concentrateBy(pour) : null;
  return (
    <>
      {pour === null ? null : <PourBucket pour={pour} state={state} />}
      <div class="instruction-words">
        <p class="instruction-lead">{sentence(step, machine)}</p>
        {amount === null || !hasAmount(state) ? null : (
          <Amount word={say(AMOUNT_WORDS[state])} amount={amount} />
        )}
        {jugs === null ? null : <p>{jugs}</p>}
        {state === "stirred" ? <Lumps /> : null}
      </div>
    </>
  );
}

function spokenSentence({ step, machine, quick }: InstructionProps): string {
  const { state, pour } = step;
  const place = placeLine(machine);
  if (state === "ready") {
    const lines = readyLines(machine);
    return [...(lines.includes(place) ? [] : [place]), ...lines].join(" ");
  }
  if (quick && pour !== null)
    return say("pour.aloud_step", {
      title: amountsOf(pour, writeSpoken),
      sentence: `${say("pour.do.quick")} ${place}`,
    });
  return state === "poured" ? `${sentence(step, machine)} ${place}` : sentence(step, machine);
}

/** What stands on the page, to be heard: units by their names, and the jugs of the concentrate. */
export function spokenOf(asked: InstructionProps & { readonly title: string }): string {
  const { step, quick, title } = asked;
  const { state, amount, pour } = step;
  const told = { title, sentence: spokenSentence(asked) };
  if (amount === null || !hasAmount(state) || (quick && pour !== null))
    return say("pour.aloud_step", told);
  const jugs = state === "concentrate" && pour !== null ? concentrateBy(pour, writeSpoken) : null;
  const said = say("pour.aloud_amount", { ...told, amount: writeSpoken(amount) });
  return jugs === null ? said : `${said} ${jugs}`;
}

export function Next({ step, now }: { readonly step: Step | undefined; readonly now: Step }) {
  if (step === undefined || now.state === "ready") return null;
  const amount = step.amount === null ? "" : write(step.amount);
  return <p class="then">{say(`pour.then.${step.state}`, { amount })}</p>;
}

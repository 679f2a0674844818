// What to do now, and in small what comes then.
import { Amount } from "../../../elements/amount";
import { PourBucket } from "../../../elements/pourrow";
import type { MachineEntry } from "../../../store/log/entry";
import { write, writeSpoken } from "../../../words/numbers";
import { say } from "../../../words/say";
import { amountsOf } from "../recipe/amounts";
import { concentrateBy } from "../recipe/pours";
import type { Step } from "./steps";

/** Said once, before anything is lifted. */
function readyLines(machine: MachineEntry): readonly string[] {
  const name = machine.body.machine.fluid.name?.trim() ?? "";
  return [
    name === "" ? say("pour.drum_unknown") : say("pour.drum", { name }),
    say("pour.gloves"),
    say("pour.still"),
    say("pour.where"),
    say("pour.count"),
    say("recipe.sheet"),
  ];
}

function Ready({ machine }: { readonly machine: MachineEntry }) {
  const { pour_here: place } = machine.body.machine;
  return (
    <ul class="ready-list">
      {place === undefined ? null : <li class="pour-here">{say("pour.here", { place })}</li>}
      {readyLines(machine).map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
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

function Quick({ pour }: Pick<Step, "pour">) {
  if (pour === null) return null;
  return (
    <div class="instruction-words">
      <p class="instruction-lead">{amountsOf(pour)}</p>
      <p>{say("pour.do.quick")}</p>
      {pour.concentrate.value > 0 ? <p>{concentrateBy(pour)}</p> : null}
      <Lumps />
    </div>
  );
}

export function Instruction({ step, machine, quick }: InstructionProps) {
  const { state, amount, pour } = step;
  if (state === "ready") return <Ready machine={machine} />;
  if (quick && step.bucket !== null) return <Quick pour={step.pour} />;
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
  if (state === "ready") return readyLines(machine).join(" ");
  if (quick && pour !== null)
    return say("pour.aloud_step", {
      title: amountsOf(pour, writeSpoken),
      sentence: say("pour.do.quick"),
    });
  return sentence(step, machine);
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

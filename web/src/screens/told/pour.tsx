// Buckets by habit: nine of ten top-ups happen so. How many, of what, about how strong.
import { Choice } from "../../elements/fields/choice";
import { Stepper } from "../../elements/fields/stepper";
import type { BucketRow } from "../../core/messages";
import type { MachineEntry } from "../../store/log/entry";
import { say, sayCount } from "../../words/say";
import { RemarksField, remarksOf, ToldForm } from "./form";
import { useTelling, type Telling } from "./telling";

const MOST_BUCKETS = 30;
/** Nobody pours a stronger mix by habit; what is stronger goes by a recipe. */
const MOST_PCT = 20;
/** Between a holding mix and the target of an ordinary fluid (common practice, no source). */
const FIRST_PCT = 3;
const KINDS = ["mix", "water", "unknown"] as const;
type Kind = (typeof KINDS)[number];

function rowOf(kind: Kind, count: number, pct: number): BucketRow {
  if (kind !== "mix") return { count, kind, about: true };
  return { count, kind, strength: { text: String(pct), unit: "%" }, about: true };
}

function StrengthStepper({ telling, pct }: { readonly telling: Telling; readonly pct: number }) {
  return (
    <Stepper
      label={say("tell.strength")}
      said={say("tell.about_pct", { n: String(pct) })}
      less={say("tell.weaker")}
      more={say("tell.stronger")}
      atLeast={pct <= 1}
      atMost={pct >= MOST_PCT}
      onStep={(by) => {
        telling.change("pct", String(pct + by));
      }}
    />
  );
}

export function TellPour({ machine }: { readonly machine: MachineEntry }) {
  const telling = useTelling(machine.machine, "pour");
  const count = Number(telling.text("count") || "1");
  const pct = Number(telling.text("pct") || String(FIRST_PCT));
  const kind = KINDS.find((one) => one === telling.text("kind")) ?? "mix";
  return (
    <ToldForm
      title="tell.pour"
      machine={machine}
      telling={telling}
      said={{
        kind: "pour",
        body: { pours: [rowOf(kind, count, pct)], finished: true, ...remarksOf(telling) },
      }}
    >
      <Stepper
        label={say("tell.count")}
        said={sayCount("tell.buckets", count)}
        less={say("tell.fewer")}
        more={say("tell.more")}
        atLeast={count <= 1}
        atMost={count >= MOST_BUCKETS}
        onStep={(by) => {
          telling.change("count", String(count + by));
        }}
      />
      <h2 id="told-of">{say("tell.of_what")}</h2>
      <Choice
        name="kind"
        labelledBy="told-of"
        options={KINDS.map((value) => ({ value, word: say(`tell.kind_${value}`) }))}
        chosen={kind}
        onChoose={(value) => {
          telling.change("kind", value);
        }}
      />
      {kind === "mix" ? <StrengthStepper telling={telling} pct={pct} /> : null}
      <RemarksField telling={telling} />
    </ToldForm>
  );
}

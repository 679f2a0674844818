// The answers of the set-up, a row a page, each with its Change. What nobody gave, or is as usual, is folded
// away: a page that is looked through at every change must not be ten screens long.
import { signal } from "@preact/signals";
import type { MachineTyped } from "../../core/messages";
import { PlaceLink } from "../../elements/buttons";
import type { SetupStep } from "../../words/fields";
import { say, sayCount } from "../../words/say";
import { address } from "../route";
import { factsByStep, type Fact } from "./facts";
import { machineOf, newForm } from "./form";
import { isAside } from "./steps";

interface GroupProps {
  readonly step: SetupStep;
  readonly facts: readonly Fact[];
  readonly base: readonly string[];
}

function Group({ step, facts, base }: GroupProps) {
  const label = say("answers.change_this", { field: say(`setup_step.${step}`) });
  return (
    <section class="fact-group">
      <dl class="fact-flow">
        {facts.map(([name, value]) => (
          <div key={name} class="fact-row">
            <dt>{name}</dt> <dd>{value.trim() === "" ? say("answers.missing") : value}</dd>
          </div>
        ))}
      </dl>
      <PlaceLink to={address(...base, step, "change")} label={label}>
        {say("change")}
      </PlaceLink>
    </section>
  );
}

/** Stays as it was while pages are changed one after another. */
const isOpen = signal(false);

function Fold({ children, count }: { readonly children: preact.ComponentChildren; count: number }) {
  return (
    <details
      class="fold"
      open={isOpen.value}
      onToggle={(event) => {
        isOpen.value = event.currentTarget.open;
      }}
    >
      <summary>
        <span class="fold-word">{say("setup_check.more")}</span>
        <span class="note">{sayCount("setup_check.more_note", count)}</span>
      </summary>
      {children}
    </details>
  );
}

/** A page aside that says what it says for a machine of which nobody has told anything. */
function usualSteps(): (step: SetupStep, facts: readonly Fact[]) => boolean {
  const usual = new Map(factsByStep(machineOf(newForm())));
  return (step, facts) =>
    isAside(step) && JSON.stringify(usual.get(step)) === JSON.stringify(facts);
}

export function Groups({
  machine,
  base,
}: {
  readonly machine: MachineTyped;
  readonly base: readonly string[];
}) {
  const isUsual = usualSteps();
  const groups = factsByStep(machine);
  const folded = groups.filter(([step, facts]) => isUsual(step, facts));
  const rows = (some: typeof groups) =>
    some.map(([step, facts]) => <Group key={step} step={step} facts={facts} base={base} />);
  return (
    <>
      {rows(groups.filter(([step, facts]) => !isUsual(step, facts)))}
      {folded.length === 0 ? null : <Fold count={folded.length}>{rows(folded)}</Fold>}
    </>
  );
}

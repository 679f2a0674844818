// The whole set-up once more; pycore reads it as a whole before it is saved.
import { useState } from "preact/hooks";
import type { DeskError, ReadMachineResult } from "../../core/messages";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { DoubtQuestion } from "../../elements/doubt";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import type { Content } from "../../store/entry";
import { save } from "../../store/journal";
import { doubtSentence, errorSentence } from "../../words/errors";
import { fieldFromPath, type SetupStep } from "../../words/fields";
import { write } from "../../words/numbers";
import { say } from "../../words/say";
import { isoWithOffset } from "../../words/times";
import { NotSaved } from "../check/notsaved";
import type { Saving } from "../check/save";
import { useAnswer, useCore } from "../core";
import { doubtName } from "../gate";
import { address, go, replace } from "../route";
import { readVersions } from "../versions";
import { factsByStep, type Fact } from "./facts";
import { machineOf, type Form } from "./form";
import type { SetupProps } from "./steps";

function Group({
  step,
  facts,
  to,
}: {
  readonly step: SetupStep;
  readonly facts: readonly Fact[];
  readonly to: string;
}) {
  return (
    <section class="fact-group">
      <dl class="fact-list">
        {facts.map(([name, value]) => (
          <div key={name} class="fact-row">
            <dt>{name}</dt>
            <dd>{value.trim() === "" ? say("answers.missing") : value}</dd>
          </div>
        ))}
      </dl>
      <PlaceLink to={to} label={say("answers.change_this", { field: say(`setup_step.${step}`) })}>
        {say("change")}
      </PlaceLink>
    </section>
  );
}

/** Settled doubts are remembered by path and number; the whole reading names them under the machine. */
function openDoubt(result: ReadMachineResult, kept: readonly string[]) {
  const settled = new Set(kept);
  return (
    result.doubts.find((doubt) => {
      const name = doubtName(doubt);
      return !settled.has(name) && !settled.has(name.replace("body.machine.", "body."));
    }) ?? null
  );
}

function useStoring(form: Form, onSaved: () => void) {
  const core = useCore();
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const [prepared, setPrepared] = useState<Content | null>(null);
  const store = async (shown: ReadMachineResult): Promise<void> => {
    setSaving({ kind: "saving" });
    const now = isoWithOffset(new Date());
    const content: Content = prepared ?? {
      id: form.entry,
      schema: 1,
      kind: "machine",
      machine: form.machine,
      measured_at: now,
      wall: now,
      body: { machine: machineOf(form) },
      shown,
      versions: await readVersions(core),
    };
    setPrepared(content);
    const outcome = await save(content);
    if (outcome.kind === "not_saved") {
      setSaving({ kind: "not_saved", trouble: outcome.trouble });
      return;
    }
    replace("machines", form.machine);
    onSaved();
  };
  return { saving, store };
}

function Refused({ error, base }: { readonly error: DeskError; readonly base: readonly string[] }) {
  const { name, setup } = fieldFromPath(error.path);
  return (
    <section class="refused">
      <h2>{say("problem")}</h2>
      <Fault>{errorSentence(error)}</Fault>
      <PlaceLink to={address(...base, setup ?? "name", "change")}>
        {say("answers.change_this", { field: name })}
      </PlaceLink>
    </section>
  );
}

interface CheckStepProps extends SetupProps {
  readonly base: readonly string[];
  readonly onSaved: () => void;
}

export function CheckStep({ form, change, onBack, place, step, base, onSaved }: CheckStepProps) {
  const core = useCore();
  const machine = machineOf(form);
  const answer = useAnswer("read_machine", { machine });
  const { saving, store } = useStoring(form, onSaved);
  const result = answer?.kind === "ok" ? answer.result : null;
  const doubt = result === null ? null : openDoubt(result, form.kept);
  if (doubt !== null) {
    const { name, setup } = fieldFromPath(doubt.path);
    return (
      <Page title={say("setup_check.title")} place={place} step={step} onBack={onBack}>
        <DoubtQuestion
          sentence={doubtSentence(doubt)}
          again={say("doubt.change", { field: name })}
          keep={say("doubt.keep", { value: write(doubt.got) })}
          onAgain={() => {
            go(...base, setup ?? "name", "change");
          }}
          onKeep={() => {
            change({ kept: [...form.kept, doubtName(doubt)] });
          }}
        />
      </Page>
    );
  }
  const press = (): void => {
    if (answer?.kind === "down") core.restart();
    else if (result !== null && saving.kind !== "saving") void store(result);
  };
  const word =
    answer?.kind === "down" || saving.kind === "not_saved" ? say("again") : say("setup_check.save");
  return (
    <Page
      title={say("setup_check.title")}
      place={place}
      step={step}
      onBack={onBack}
      action={
        <>
          <NotSaved saving={saving} />
          <MainAction onPress={press} busy={result === null && answer?.kind !== "down"}>
            {word}
          </MainAction>
        </>
      }
    >
      {answer === null ? (
        <p role="status" class="note">
          {say("setup_check.reading")}
        </p>
      ) : null}
      {answer?.kind === "down" ? <p role="alert">{say("recipe.down")}</p> : null}
      {answer?.kind === "error" ? <Refused error={answer.error} base={base} /> : null}
      {factsByStep(machine).map(([name, facts]) => (
        <Group key={name} step={name} facts={facts} to={address(...base, name, "change")} />
      ))}
    </Page>
  );
}

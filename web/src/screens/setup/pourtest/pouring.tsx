// The pour test itself, one step after the other: pour, wait, dip. Each step is looked at by pycore
// before it is kept, so that a level that did not rise is noticed while the bucket is still in the hand.
import { useState } from "preact/hooks";
import type { DeskError } from "../../../core/messages";
import { MainAction, OtherAction, PlaceLink } from "../../../elements/buttons";
import { DoubtQuestion } from "../../../elements/doubt";
import { Fault } from "../../../elements/fault";
import { Keypad } from "../../../elements/fields/keypad";
import { Page } from "../../../elements/page";
import { TextField } from "../../../elements/fields/textfield";
import { Hint } from "../../../elements/why";
import { countedPairs, endPours, type PourStep } from "../../../store/underway/pours";
import { doubtSentence, errorSentence } from "../../../words/errors";
import { write, writeTyped } from "../../../words/numbers";
import { say, type Key } from "../../../words/say";
import { isoWithOffset } from "../../../words/times";
import { useAnswer, useCore } from "../../core";
import { checkOf, emptyError, useGate, type Gate } from "../../gate";
import { address } from "../../route";
import { PourPairs } from "./pourpairs";
import { PourTable } from "./pourtable";
import { pourTestOf, withTable, type Test } from "./pourtest";
import type { SetupProps } from "../steps";

function usePouring({ test, put, body }: Test): Gate {
  const core = useCore();
  const { poured, depth, steps } = test;
  const row = steps.length;
  const step: PourStep = { poured, depth };
  const plain = (["poured", "depth"] as const)
    .filter((part) => step[part].trim() === "")
    .map((part) => emptyError(`body.steps[${row}].${part}`));
  return useGate({
    plain,
    // An empty field is told by the page; pycore is asked about whole steps only.
    look: () =>
      plain.length > 0
        ? Promise.resolve(null)
        : core.ask("calibrate_sump", body([...steps, step])).then(checkOf),
    kept: test.kept,
    onKept: (kept) => {
      put({ kept });
    },
    onPass: () => {
      put({ steps: [...steps, { ...step, at: isoWithOffset(new Date()) }], depth: "" });
    },
    about: JSON.stringify([row, step, test.kept]),
  });
}

function sentenceOf(error: DeskError, { test }: Test): string {
  if (error.code !== "not_rising") return errorSentence(error);
  const last = test.steps.at(-1)?.depth ?? (test.start === "rest" ? test.startDepth : "0");
  return say("pours.not_rising", { last: writeTyped({ text: last, unit: test.units.stick }) });
}

interface Frame {
  readonly title: string;
  readonly place: string;
  readonly step: string;
  readonly onBack: () => void;
}

type Part = "poured" | "depth";

interface StepProps {
  readonly of: Test;
  readonly gate: Gate;
}

/** Inches have parts, which our keys lack. */
const hasKeys = (unit: string): boolean => unit !== "in" && unit !== "ft";

interface MeantProps extends StepProps {
  readonly meant: Part;
  readonly onMeant: (part: Part) => void;
}

const unitOf = ({ test }: Test, part: Part): string =>
  part === "depth" ? test.units.stick : test.units.pail;

function Measured({
  of,
  gate,
  part,
  label,
  meant,
  onMeant,
}: MeantProps & { part: Part; label: Key }) {
  const { test, put } = of;
  const row = test.steps.length;
  const error = gate.errors.find(({ path }) => path.startsWith(`body.steps[${row}].${part}`));
  const onKeys = (): void => {
    onMeant(part);
  };
  return (
    <TextField
      id={`pour-${part}`}
      label={say(label)}
      unit={unitOf(of, part)}
      text={test[part]}
      fault={error === undefined ? undefined : sentenceOf(error, of)}
      onKeys={hasKeys(unitOf(of, part)) ? onKeys : undefined}
      isMeant={meant === part}
      onText={(text) => {
        put({ [part]: text });
      }}
    />
  );
}

function Keys({ of, meant }: { readonly of: Test; readonly meant: Part }) {
  const unit = unitOf(of, meant);
  if (!hasKeys(unit)) return null;
  return (
    <Keypad
      text={of.test[meant]}
      sign={unit === "mm" || unit === "mL" ? "whole" : "decimal"}
      onText={(text) => {
        of.put({ [meant]: text });
      }}
    />
  );
}

function StepFields({ of, gate }: StepProps) {
  const [meant, setMeant] = useState<Part>("depth");
  const row = of.test.steps.length;
  const loose = gate.errors.filter(({ path }) => !path.startsWith(`body.steps[${row}]`));
  const common = { of, gate, meant, onMeant: setMeant };
  const dip = of.dipQuantity === "outage_mm" ? "pours.dip_top" : "pours.dip";
  return (
    <>
      {loose.map((error) => (
        <Fault key={error.path}>{sentenceOf(error, of)}</Fault>
      ))}
      <ol class="pour-steps">
        <li>
          <Measured {...common} part="poured" label="pours.pour" />
        </li>
        <li>
          <p class="pour-wait">{say("pours.wait")}</p>
        </li>
        <li>
          <Measured {...common} part="depth" label={dip} />
        </li>
      </ol>
      <Keys of={of} meant={meant} />
    </>
  );
}

function Undo({ test, put }: Test) {
  const last = test.steps.at(-1);
  if (last === undefined) return null;
  const blanks = {
    poured: writeTyped({ text: last.poured, unit: test.units.pail }),
    depth: writeTyped({ text: last.depth, unit: test.units.stick }),
  };
  return (
    <OtherAction
      onPress={() => {
        put({ steps: test.steps.slice(0, -1), poured: last.poured, depth: last.depth });
      }}
    >
      {say("pours.undo", blanks)}
    </OtherAction>
  );
}

function Asked({ gate, ...frame }: { readonly gate: Gate } & Frame) {
  if (gate.doubt === null) return null;
  return (
    <Page {...frame}>
      <DoubtQuestion
        sentence={doubtSentence(gate.doubt)}
        again={say("pours.dip_again")}
        keep={say("doubt.keep", { value: write(gate.doubt.got) })}
        onAgain={gate.again}
        onKeep={gate.keep}
      />
    </Page>
  );
}

export function PouringStep(props: SetupProps) {
  const { form, change, next, place, onBack } = props;
  const of = pourTestOf(form);
  const { test } = of;
  const gate = usePouring(of);
  const count = test.steps.length + countedPairs(test.pairs).length;
  const answer = useAnswer("calibrate_sump", count === 0 ? null : of.body(test.steps));
  const result = answer?.kind === "ok" ? answer.result : null;
  const error = answer?.kind === "error" ? answer.error : null;
  const title = say("pours.step", { n: String(test.steps.length + 1) });
  const frame: Frame = { title, place, step: say("pours.place"), onBack };
  if (gate.doubt !== null) return <Asked gate={gate} {...frame} />;
  const use = (): void => {
    if (result === null) return;
    change(withTable(form, result, of.body(test.steps)));
    endPours(form.machine);
    next();
  };
  return (
    <Page {...frame}>
      <Hint id="hint" hint={say("pours.step_hint")} why={say("pours.step_why")} />
      <StepFields of={of} gate={gate} />
      {/* Not at the foot: the table below grows with every step, and this is pressed in each. */}
      <MainAction onPress={gate.pass} about={`${test.steps.length} ${test.poured} ${test.depth}`}>
        {say("pours.keep")}
      </MainAction>
      <Undo {...of} />
      {error === null || error.path.startsWith("body.pairs[") ? null : (
        <Fault>{sentenceOf(error, of)}</Fault>
      )}
      <PourPairs form={form} of={of} error={error} />
      <PourTable count={count} result={result} onUse={use} />
      <section class="places">
        <p class="note">{say("pours.stop_note")}</p>
        <PlaceLink to={address()}>{say("pours.stop")}</PlaceLink>
      </section>
    </Page>
  );
}

// The pour test itself, one step after the other: pour, wait, dip. Each step is looked at by pycore
// before it is kept, so that a level that did not rise is noticed while the bucket is still in the hand.
import type { DeskError } from "../../core/messages";
import { MainAction, OtherAction, PlaceLink } from "../../elements/buttons";
import { DoubtQuestion } from "../../elements/doubt";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { TextField } from "../../elements/textfield";
import { Hint } from "../../elements/why";
import { countedPairs, endPours, type PourStep } from "../../store/pours";
import { doubtSentence, errorSentence } from "../../words/errors";
import { write, writeTyped } from "../../words/numbers";
import { say } from "../../words/say";
import { useAnswer, useCore } from "../core";
import { checkOf, emptyError, useGate, type Gate } from "../gate";
import { address } from "../route";
import { PourPairs } from "./pourpairs";
import { PourTable } from "./pourtable";
import { pourTestOf, withTable, type Test } from "./pourtest";
import type { SetupProps } from "./steps";

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
      put({ steps: [...steps, step], depth: "" });
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

interface StepProps {
  readonly of: Test;
  readonly gate: Gate;
}

function StepFields({ of, gate }: StepProps) {
  const { test, put } = of;
  const row = test.steps.length;
  const at = (part: keyof PourStep): string | undefined => {
    const error = gate.errors.find(({ path }) => path.startsWith(`body.steps[${row}].${part}`));
    return error === undefined ? undefined : sentenceOf(error, of);
  };
  const loose = gate.errors.filter(({ path }) => !path.startsWith(`body.steps[${row}]`));
  return (
    <>
      {loose.map((error) => (
        <Fault key={error.path}>{sentenceOf(error, of)}</Fault>
      ))}
      <ol class="pour-steps">
        <li>
          <TextField
            id="poured"
            label={say("pours.pour")}
            unit={test.units.pail}
            text={test.poured}
            fault={at("poured")}
            onText={(poured) => {
              put({ poured });
            }}
          />
        </li>
        <li>
          <p class="pour-wait">{say("pours.wait")}</p>
        </li>
        <li>
          <TextField
            id="pour-depth"
            label={say(of.dipQuantity === "outage_mm" ? "pours.dip_top" : "pours.dip")}
            unit={test.units.stick}
            text={test.depth}
            fault={at("depth")}
            onText={(depth) => {
              put({ depth });
            }}
          />
        </li>
      </ol>
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
    change(withTable(form, result));
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

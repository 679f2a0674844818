// One number off the ordinary way, asked like dip and reading: question, drawing, field, keys.
import type { ComponentChildren } from "preact";
import type { DeskError } from "../../core/messages";
import { MainAction } from "../../elements/buttons";
import { Fault } from "../../elements/fault";
import { NumberField } from "../../elements/fields/numberfield";
import { Page } from "../../elements/page";
import { Hint } from "../../elements/why";
import { errorSentence } from "../../words/errors";
import { say } from "../../words/say";
import type { Check, Gate } from "../gate";
import { MeasureDoubt } from "./measuredoubt";
import type { CheckProps } from "./steps";

/** Of a whole question only what belongs to this page; the rest is told where it is answered. */
export function onlyAt(check: Check | null, path: string): Check | null {
  if (check === null) return null;
  const isHere = (found: { path: string }): boolean => found.path.startsWith(path);
  return { errors: check.errors.filter(isHere), doubts: check.doubts.filter(isHere) };
}

export const NOTHING_WRONG: Check = { errors: [], doubts: [] };

interface AskNumberProps extends Pick<CheckProps, "machine" | "step" | "onBack"> {
  readonly title: string;
  readonly hint: string;
  readonly why: string;
  /** The field's name inside a sentence. */
  readonly field: string;
  readonly unit: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly gate: Gate;
  readonly drawing: ComponentChildren;
  readonly keys: ComponentChildren;
  readonly side?: ComponentChildren;
  /** Stands under the field. */
  readonly below?: ComponentChildren;
  /** Where Continue is not yet the way on. */
  readonly action?: { readonly word: string; readonly onPress: () => void } | undefined;
}

function Above({ error, asked }: { error: DeskError | undefined; asked: AskNumberProps }) {
  if (error !== undefined) return <Fault id="hint">{errorSentence(error, asked.field)}</Fault>;
  return <Hint id="hint" hint={asked.hint} why={asked.why} />;
}

export function AskNumber(asked: AskNumberProps) {
  const { machine, step, onBack, gate, text, unit, drawing } = asked;
  const { word, onPress } = asked.action ?? { word: say("go_on"), onPress: gate.pass };
  const action = (
    <MainAction onPress={onPress} about={word + text}>
      {word}
    </MainAction>
  );
  return (
    <Page
      title={asked.title}
      place={machine.body.machine.name}
      step={step}
      layout="question"
      onBack={onBack}
      side={asked.side}
      action={gate.doubt === null ? action : undefined}
    >
      <Above error={gate.errors[0]} asked={asked} />
      <div class={unit === "in" ? "measure measure-inch" : "measure"}>
        {drawing}
        <div class="measure-side">
          <NumberField
            labelledBy="question"
            describedBy="hint"
            text={text}
            unit={unit}
            faulty={gate.errors.length > 0}
            onText={asked.onText}
            onEnter={onPress}
          />
          {asked.below}
        </div>
      </div>
      {gate.doubt === null ? (
        asked.keys
      ) : (
        <MeasureDoubt
          gate={gate}
          field={asked.field}
          again={say("doubt.change", { field: asked.field })}
        />
      )}
    </Page>
  );
}

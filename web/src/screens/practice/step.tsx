// One step by hand: what is known, one number, and at once or later how it came out.
import { useEffect, useState } from "preact/hooks";
import type { AssessSumpBody, DeskError, JudgePracticeResult } from "../../core/messages";
import { MainAction, OtherAction, SideAction } from "../../elements/buttons";
import { Eyepiece } from "../../elements/drawings/eyepiece";
import { Fault } from "../../elements/fault";
import { Keypad } from "../../elements/fields/keypad";
import { NumberField } from "../../elements/fields/numberfield";
import { SectionDrawing } from "../../elements/drawings/section";
import { changePractice, NUMBER_STEPS, type NumberStep } from "../../store/underway/practice";
import { errorSentence } from "../../words/errors";
import { say } from "../../words/say";
import { dimensionOf } from "../check/dip/dip";
import { useCore, useResult } from "../core";
import { emptyError } from "../gate";
import { back, go } from "../route";
import { judgeBody, unitOf, upTo } from "./body";
import { Facts, type Known } from "./facts";
import { PracticeFrame } from "./frame";
import { StepVerdict } from "./verdict";

interface StepProps {
  readonly known: Known;
  readonly step: NumberStep;
}

function DealtDrawing({ known: { deal }, step }: StepProps) {
  const { machine, dip, reading } = deal.check;
  const { sump, fluid, target, units } = machine;
  const dipped: AssessSumpBody = { sump, fluid, target, units, dip };
  const body = step === "volume" ? dipped : { ...dipped, reading };
  const result = useResult("assess_sump", body);
  if (step === "strength") {
    const brix = result?.strength?.reading_brix.value ?? null;
    return <Eyepiece name={say("practice.fact.reading", { reading: "" })} value={brix} />;
  }
  const depth = result?.level?.shown.depth;
  return (
    <SectionDrawing
      name={say("practice.drawing")}
      size="small"
      stick={step === "volume"}
      section={result?.section ?? null}
      dimension={depth === undefined || step !== "volume" ? undefined : dimensionOf(depth)}
    />
  );
}

interface Compared {
  readonly about: string;
  readonly result: JudgePracticeResult | null;
  readonly error: DeskError | null;
  readonly isDown: boolean;
}

const NOTHING: Compared = { about: "", result: null, error: null, isDown: false };

/** What pycore says about this very text; another text ends it. */
function useCompared({ known, step }: StepProps, onRight: () => void) {
  const core = useCore();
  const [kept, setKept] = useState<Compared>(NOTHING);
  const { deal, practice } = known;
  const text = practice.texts[step] ?? "";
  const compared = kept.about === text ? kept : NOTHING;
  const compare = async (): Promise<void> => {
    const about = text;
    if (text.trim() === "") {
      setKept({ ...NOTHING, about, error: emptyError(`body.answers.${step}`) });
      return;
    }
    const body = judgeBody(deal, practice, upTo(deal, step));
    const answer = await core.ask("judge_practice", body, "judge");
    if (answer.kind === "error") setKept({ ...NOTHING, about, error: answer.error });
    if (answer.kind === "down") setKept({ ...NOTHING, about, isDown: true });
    if (answer.kind !== "ok") return;
    if (practice.mode === "end") onRight();
    else setKept({ ...NOTHING, about, result: answer.result });
  };
  const forget = (): void => {
    setKept(NOTHING);
  };
  return { ...compared, compare, forget };
}

interface AnswerProps extends StepProps {
  readonly faulty: boolean;
  readonly onEnter: () => void;
}

function Answer({ known, step, faulty, onEnter }: AnswerProps) {
  const { texts } = known.practice;
  const text = texts[step] ?? "";
  const onText = (next: string): void => {
    changePractice({ texts: { ...texts, [step]: next } });
  };
  return (
    <>
      <div class="measure">
        <DealtDrawing known={known} step={step} />
        <div class="measure-side">
          <NumberField
            labelledBy="question"
            describedBy="hint"
            text={text}
            unit={unitOf(step)}
            faulty={faulty}
            onText={onText}
            onEnter={onEnter}
          />
        </div>
      </div>
      <Keypad text={text} sign="decimal" onText={onText} />
    </>
  );
}

function stepLine({ deal, practice }: Known, step: NumberStep): string {
  return say("practice.step", {
    number: practice.number,
    n: String(deal.steps.indexOf(step) + 1),
    all: String(deal.steps.length),
  });
}

function nextOf({ deal }: Known, step: NumberStep): string {
  return deal.steps[deal.steps.indexOf(step) + 1] ?? "pours";
}

/** Where the solution was asked for, or an own number was compared. */
function Seen({
  known,
  step,
  result,
  onChange,
}: StepProps & { readonly result: JudgePracticeResult; readonly onChange: () => void }) {
  const judged = result.steps.find((one) => one.step === step);
  if (judged === undefined) return null;
  return (
    <>
      <StepVerdict step={judged} result={result} level={known.practice.level} />
      <OtherAction onPress={onChange}>{say("practice.change")}</OtherAction>
    </>
  );
}

interface ActionProps extends StepProps {
  readonly isSeen: boolean;
  readonly onCompare: () => void;
  readonly onGoOn: () => void;
}

function Action({ known: { practice }, step, isSeen, onCompare, onGoOn }: ActionProps) {
  if (isSeen)
    return (
      <MainAction onPress={onGoOn} about="seen">
        {say("go_on")}
      </MainAction>
    );
  return (
    <MainAction onPress={onCompare} about={`compare ${practice.texts[step] ?? ""}`}>
      {practice.mode === "each" ? say("practice.check") : say("go_on")}
    </MainAction>
  );
}

function Above({ known, step, error, isDown }: StepProps & Pick<Compared, "error" | "isDown">) {
  if (error !== null)
    return <Fault id="hint">{errorSentence(error, errorName(error, step))}</Fault>;
  return (
    <>
      {isDown ? <Fault>{say("practice.down")}</Fault> : null}
      <Facts step={step} known={known} />
    </>
  );
}

/** An earlier number that can no longer be read is named by its own step. */
function errorName({ path }: DeskError, step: NumberStep): string {
  const named = NUMBER_STEPS.find((one) => path === `body.answers.${one}`) ?? step;
  return say(`practice.field.${named}`);
}

export function StepScreen({ known, step }: StepProps) {
  const { deal, practice } = known;
  const { shown } = practice;
  useEffect(() => {
    changePractice({ at: step });
  }, [step]);
  const goOn = (): void => {
    go("practice", nextOf(known, step));
  };
  const compared = useCompared({ known, step }, goOn);
  const isShown = shown.includes(step);
  const result = isShown ? known.result : compared.result;
  const change = (): void => {
    compared.forget();
    changePractice({ shown: shown.filter((one) => one !== step) });
  };
  const showMe = (): void => {
    changePractice({ shown: [...shown, step] });
  };
  const compare = (): void => void compared.compare();
  const isSeen = isShown || result !== null;
  const common = { known, step };
  return (
    <PracticeFrame
      deal={deal}
      title={say(`practice.ask.${step}`)}
      step={stepLine(known, step)}
      layout="question"
      side={isSeen ? undefined : <SideAction onPress={showMe}>{say("practice.show")}</SideAction>}
      onBack={() => {
        back("practice");
      }}
      action={<Action {...common} isSeen={isSeen} onCompare={compare} onGoOn={goOn} />}
    >
      <Above {...common} error={compared.error} isDown={compared.isDown} />
      {isSeen && result !== null ? <Seen {...common} result={result} onChange={change} /> : null}
      {isSeen ? null : <Answer {...common} faulty={compared.error !== null} onEnter={compare} />}
    </PracticeFrame>
  );
}

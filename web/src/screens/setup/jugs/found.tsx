// What the jugs tell: the factor with its range, how each jug fits, and what looks wrong asked once each.
import { useMemo } from "preact/hooks";
import type { Doubt, FitFactorResult } from "../../../core/messages";
import { MainAction, OtherAction } from "../../../elements/buttons";
import { DoubtQuestion } from "../../../elements/doubt";
import { Fault } from "../../../elements/fault";
import { Page } from "../../../elements/page";
import { doubtSentence, errorSentence } from "../../../words/errors";
import { write } from "../../../words/numbers";
import { say } from "../../../words/say";
import { useAnswer } from "../../core";
import { doubtName } from "../../gate";
import type { Form } from "../form";
import { instrumentOf, today } from "../fluid/glass";
import { fitBody } from "./jugs";
import type { SetupProps } from "../steps";

/** Pages from the factor's own to this one. */
const PAGES_BACK = 3;

type Jug = FitFactorResult["jugs"][number];

/** "Jug 2 reads 0.2 Brix too high": the sign becomes a word. */
function residual({ shown: { off } }: Jug, i: number): string {
  const size = write({ ...off, value: Math.abs(off.value) });
  const key = off.value === 0 ? "found.fits" : off.value > 0 ? "found.high" : "found.low";
  return say(key, { row: String(i + 1), off: size });
}

/** The factor in its words, as it goes into the form. */
function foundPart({ keep }: FitFactorResult): Partial<Form> {
  return {
    hasFactor: "yes",
    factorWay: "multiply",
    factor: keep.factor.text,
    factorU: keep.factor_u.text,
    factorOffset: keep.factor_offset?.text ?? "",
    factorOn: keep.factor_on,
    factorBy: "own_jugs",
  };
}

function Result({ result }: { readonly result: FitFactorResult }) {
  const { factor, low, high, five_reads: reads, offset } = result.shown;
  return (
    <section class="plain-page">
      <p class="strength" role="status">
        {say("found.factor", { factor: write(factor) })}
      </p>
      <p class="plain-lead">{say("found.range", { low: write(low), high: write(high) })}</p>
      <p>{say("factor.five_reads", { reading: write(reads) })}</p>
      {offset === undefined ? null : <p>{say("found.offset", { offset: write(offset) })}</p>}
      <h2>{say("found.jugs")}</h2>
      <ul class="facts">
        {result.jugs.map((jug, i) => (
          <li key={i}>
            <b>{residual(jug, i)}</b>{" "}
            {say("found.jug", {
              strength: write(jug.shown.strength),
              reading: write(jug.shown.reading),
              expected: write(jug.shown.expected),
            })}
          </li>
        ))}
      </ul>
      <p class="note">{say("found.fresh")}</p>
    </section>
  );
}

function useFit(form: Form) {
  const on = useMemo(today, []);
  const { instrument } = instrumentOf(form, form.units.pail);
  return useAnswer("fit_factor", fitBody(form, instrument, on));
}

function Asked({ doubt, props }: { readonly doubt: Doubt; readonly props: SetupProps }) {
  const { form, change, place, step, onBack } = props;
  return (
    <Page title={say("found.title")} place={place} step={step} onBack={onBack}>
      <DoubtQuestion
        key={doubtName(doubt)}
        sentence={doubtSentence(doubt)}
        again={say("found.again")}
        keep={say("doubt.keep", { value: write(doubt.got) })}
        onAgain={onBack}
        onKeep={() => {
          change({ kept: [...form.kept, doubtName(doubt)] });
        }}
      />
    </Page>
  );
}

export function FoundStep(props: SetupProps) {
  const { form, change, place, step, onBack, backOver } = props;
  const answer = useFit(form);
  const result = answer?.kind === "ok" ? answer.result : null;
  const doubt = result?.doubts.find((found) => !form.kept.includes(doubtName(found)));
  if (doubt !== undefined) return <Asked doubt={doubt} props={props} />;
  const use = (): void => {
    if (result === null) return;
    change(foundPart(result));
    backOver(PAGES_BACK, "factor");
  };
  const action =
    result === null ? undefined : <MainAction onPress={use}>{say("found.use")}</MainAction>;
  return (
    <Page title={say("found.title")} place={place} step={step} onBack={onBack} action={action}>
      {result === null ? null : <Result result={result} />}
      {answer === null ? <p role="status">{say("recipe.working")}</p> : null}
      {answer?.kind === "down" ? <p role="alert">{say("recipe.down")}</p> : null}
      {answer?.kind === "error" ? <Fault>{errorSentence(answer.error)}</Fault> : null}
      <OtherAction onPress={onBack}>{say("found.again")}</OtherAction>
    </Page>
  );
}

// How it came out: the person's recipe beside ours, then every step with its working.
import { useEffect } from "preact/hooks";
import type { JudgePracticeResult, OwnJudged, RecipeJudged, Section } from "../../core/messages";
import { BucketRow } from "../../elements/drawings/bucket";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Fault } from "../../elements/fault";
import { SectionDrawing } from "../../elements/drawings/section";
import {
  beginPractice,
  changePractice,
  drawNumber,
  type Practice,
} from "../../store/underway/practice";
import { errorSentence } from "../../words/errors";
import { write } from "../../words/numbers";
import { say, sayCount } from "../../words/say";
import { useAnswer } from "../core";
import { address, back, go } from "../route";
import { judgeBody } from "./body";
import type { Known } from "./facts";
import { PracticeFrame } from "./frame";
import { StepVerdict, VerdictMark, type Verdict } from "./verdict";
import { faultLine, slipLine } from "./words";

const MARK_OF: Readonly<Record<OwnJudged["standing"], Verdict>> = {
  good: "right",
  works: "near",
  off: "off",
};

function Buckets({ recipe }: { readonly recipe: RecipeJudged }) {
  const { pours, buckets, take_out: out } = recipe;
  return (
    <>
      {out === undefined ? null : <p>{say("practice.out", { take_out: write(out) })}</p>}
      <BucketRow pours={pours} name={sayCount("recipe.row", buckets)} />
      <ul class="facts">
        {pours.map((pour, i) => (
          <li key={i}>
            {sayCount("told.buckets_marks", pour.count, {
              water: write(pour.water),
              concentrate: write(pour.concentrate),
            })}
          </li>
        ))}
      </ul>
    </>
  );
}

function ends(recipe: RecipeJudged): { strength: string; volume: string } {
  return { strength: write(recipe.strength), volume: write(recipe.volume) };
}

/** More than the sump holds has no drawing and no end: it is on the floor. */
function endLine({ recipe, over }: OwnJudged): string {
  return recipe.after === undefined
    ? say("practice.ends_over", { over: write(over) })
    : say("practice.ends", ends(recipe));
}

function Own({ own }: { readonly own: OwnJudged }) {
  const slip = slipLine(own.slip);
  return (
    <section class="verdict-part">
      <h2>{say("practice.own")}</h2>
      <VerdictMark
        verdict={MARK_OF[own.standing]}
        word={say(`practice.standing.${own.standing}`)}
      />
      <p>{endLine(own)}</p>
      {own.faults.map((fault) => (
        <p key={fault} class="slip">
          {faultLine(fault, own.over, own.left)}
        </p>
      ))}
      {slip === null ? null : <p class="slip">{slip}</p>}
      <Buckets recipe={own.recipe} />
    </section>
  );
}

function Drawn({
  word,
  section,
}: {
  readonly word: string;
  readonly section: Section | undefined;
}) {
  if (section === undefined) return null;
  return (
    <figure>
      <SectionDrawing name={word} section={section} size="half" />
      <figcaption>
        <b>{word}</b>
      </figcaption>
    </figure>
  );
}

function Recipes({ result }: { readonly result: JudgePracticeResult }) {
  const { recipe: own, solution, before, aim, band_low, band_high } = result;
  const band = { aim: write(aim), low: write(band_low), high: write(band_high) };
  return (
    <>
      {own === undefined ? null : <Own own={own} />}
      <div class="before-after">
        <Drawn word={say("practice.before")} section={before} />
        {own === undefined ? (
          <Drawn word={say("practice.after_ours")} section={solution.after} />
        ) : (
          <Drawn word={say("practice.after_yours")} section={own.recipe.after} />
        )}
      </div>
      <section class="verdict-part">
        <h2>{say("practice.ours")}</h2>
        <p>
          {say("practice.ours_ends", ends(solution))} {say("practice.band", band)}
        </p>
        {solution.take_out === undefined ? null : <p>{say("practice.ours_out")}</p>}
        <Buckets recipe={solution} />
      </section>
    </>
  );
}

function Steps({ result, practice }: { result: JudgePracticeResult; practice: Practice }) {
  return (
    <>
      {result.steps.map((step) => (
        <StepVerdict key={step.step} step={step} result={result} level={practice.level} withName />
      ))}
    </>
  );
}

export function ResultScreen({ known }: { readonly known: Known }) {
  const { deal, practice } = known;
  useEffect(() => {
    changePractice({ at: "result" });
  }, []);
  const answer = useAnswer("judge_practice", judgeBody(deal, practice, deal.steps));
  const another = (): void => {
    beginPractice(practice.level, drawNumber(), practice.mode);
    go("practice", "volume");
  };
  return (
    <PracticeFrame
      deal={deal}
      title={say("practice.result")}
      step={say("practice.number", { number: practice.number })}
      onBack={() => {
        back("practice");
      }}
      action={<MainAction onPress={another}>{say("practice.more")}</MainAction>}
    >
      {answer?.kind === "error" ? (
        <>
          <p>{say("practice.none")}</p>
          <Fault>{errorSentence(answer.error)}</Fault>
        </>
      ) : null}
      {answer?.kind === "ok" ? (
        <>
          <Recipes result={answer.result} />
          <Steps result={answer.result} practice={practice} />
        </>
      ) : null}
      <p class="note">{say("practice.real")}</p>
      <div class="places">
        <PlaceLink to={address("practice", "pours")}>{say("practice.change_buckets")}</PlaceLink>
        <PlaceLink to={address("practice")}>{say("practice.other")}</PlaceLink>
      </div>
    </PracticeFrame>
  );
}

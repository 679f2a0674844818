// Which page of practice stands there now: the sump comes from its number, so a reload resumes it.
import { Page } from "../../elements/page";
import { practice, type NumberStep, type Practice } from "../../store/underway/practice";
import { say } from "../../words/say";
import { useAnswer, useResult } from "../core";
import { CoreTrouble } from "../foot";
import { back } from "../route";
import { PoursScreen } from "./pours";
import { ResultScreen } from "./result";
import { StartScreen } from "./start";
import { StepScreen } from "./step";

function Waiting() {
  return (
    <Page
      title={say("practice.title")}
      place={say("learn.title")}
      onBack={() => {
        back("learn");
      }}
    >
      <p role="status">{say("practice.waiting")}</p>
      <CoreTrouble />
    </Page>
  );
}

function Dealt({ practice: kept, place }: { readonly practice: Practice; readonly place: string }) {
  const body = { level: kept.level, number: { text: kept.number, unit: "1" as const } };
  const answer = useAnswer("deal_practice", body);
  const deal = answer?.kind === "ok" ? answer.result : null;
  const result = useResult(
    "judge_practice",
    deal === null ? null : { check: deal.check, answers: {} },
  );
  if (answer?.kind === "error") return <StartScreen />;
  if (deal === null) return <Waiting />;
  const known = { deal, practice: kept, result };
  if (place === "result") return <ResultScreen known={known} />;
  if (place === "pours") return <PoursScreen known={known} />;
  const step = deal.steps.find((one): one is NumberStep => one === place && one !== "pours");
  return step === undefined ? <StartScreen /> : <StepScreen key={step} known={known} step={step} />;
}

export function PracticeScreen({ place }: { readonly place: string | undefined }) {
  const kept = practice.value;
  if (place === undefined || kept === null) return <StartScreen />;
  return <Dealt key={`${kept.level} ${kept.number}`} practice={kept} place={place} />;
}

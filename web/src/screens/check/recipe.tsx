// The recipe: the whole check goes to pycore as it was typed, and what comes back is shown.
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { secondLook } from "../../core/secondlook";
import type { DeskError, Doubt, PlanCheckResult } from "../../core/messages";
import { MainAction, OtherAction, PlaceLink } from "../../elements/buttons";
import { DoubtQuestion } from "../../elements/doubt";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { planBody } from "../../store/walk";
import { doubtSentence, errorSentence } from "../../words/errors";
import { fieldFromPath } from "../../words/fields";
import { write } from "../../words/numbers";
import { say } from "../../words/say";
import { useAnswer, useCore } from "../core";
import { doubtName } from "../gate";
import { address, go } from "../route";
import { CannotView } from "./cannot";
import { Disagree } from "./disagree";
import { NoRecipe } from "./norecipe";
import { NotSaved, saveWord } from "./notsaved";
import { NothingView, RecipeView } from "./recipeview";
import { useSaving } from "./save";
import { ShortOfConcentrate } from "./stock";
import type { CheckProps } from "./steps";

/** Doubts about the set-up were settled when it was saved; here only this check's own count. */
export function openDoubt(
  result: Pick<PlanCheckResult, "doubts">,
  kept: readonly string[],
): Doubt | null {
  const own = ["body.dip", "body.reading", "body.aim", "body.fill_to_depth", "body.usual"];
  return (
    result.doubts.find(
      (doubt) =>
        own.some((part) => doubt.path.startsWith(part)) && !kept.includes(doubtName(doubt)),
    ) ?? null
  );
}

export function Frame({
  props,
  title,
  children,
  action,
}: {
  props: CheckProps;
  title: string;
  children: ComponentChildren;
  action?: ComponentChildren;
}) {
  return (
    <Page
      title={title}
      place={props.machine.body.machine.name}
      step={props.step}
      onBack={props.onBack}
      action={action}
    >
      {children}
    </Page>
  );
}

export function Waiting({ props }: { readonly props: CheckProps }) {
  const phase = useCore().phase.value;
  return (
    <Frame props={props} title={say("recipe.title")}>
      <p role="status">
        {phase.kind === "starting" ? say("recipe.starting") : say("recipe.working")}
      </p>
    </Frame>
  );
}

/** A new worker answers every open question again. */
function TryAgain() {
  const core = useCore();
  return (
    <MainAction
      onPress={() => {
        core.restart();
      }}
    >
      {say("again")}
    </MainAction>
  );
}

export function Down({ props }: { readonly props: CheckProps }) {
  return (
    <Frame props={props} title={say("recipe.title")} action={<TryAgain />}>
      <p role="alert">{say("recipe.down")}</p>
    </Frame>
  );
}

/** Leads to the page where the named field is answered, and back here over the answers. */
export function Refused({
  props,
  error,
}: {
  readonly props: CheckProps;
  readonly error: DeskError;
}) {
  const { name, walk, setup } = fieldFromPath(error.path);
  const id = props.machine.machine;
  const to =
    walk === undefined
      ? address("machines", id, "set-up", setup ?? "check", "change")
      : address("machines", id, walk, "change");
  return (
    <Frame props={props} title={say("problem")}>
      <Fault>{errorSentence(error)}</Fault>
      <PlaceLink to={to}>{say("answers.change_this", { field: name })}</PlaceLink>
    </Frame>
  );
}

export function Doubted({ props, doubt }: { readonly props: CheckProps; readonly doubt: Doubt }) {
  const { walk } = fieldFromPath(doubt.path);
  return (
    <Frame props={props} title={say("doubt.name")}>
      <DoubtQuestion
        sentence={doubtSentence(doubt)}
        again={say("doubt.again")}
        keep={say("doubt.keep", { value: write(doubt.got) })}
        onAgain={() => {
          go("machines", props.machine.machine, walk ?? "answers", "change");
        }}
        onKeep={() => {
          props.change({ kept: [...props.walk.kept, doubtName(doubt)] });
        }}
      />
    </Frame>
  );
}

function Disagreed({
  props,
  result,
  found_pct,
}: {
  readonly props: CheckProps;
  readonly result: PlanCheckResult;
  readonly found_pct: number;
}) {
  return (
    <Frame props={props} title={say("second.title")} action={<TryAgain />}>
      <Disagree result={result} found_pct={found_pct} />
    </Frame>
  );
}

function titleOf(result: PlanCheckResult, isCannot: boolean): string {
  if (isCannot) return say("cannot.title");
  return result.plan.pours.length === 0 ? say("nothing.title") : say("recipe.title");
}

function Ready({
  props,
  result,
}: {
  readonly props: CheckProps;
  readonly result: PlanCheckResult;
}) {
  const { saving, press } = useSaving(props.machine, props.walk, result);
  const [takesBest, setTakesBest] = useState(false);
  const isCannot = result.plan.verdict === "out_of_band" && !takesBest;
  const changeTarget = (): void => {
    go("machines", props.machine.machine, "target", "change");
  };
  const action = (
    <>
      <NotSaved saving={saving} />
      <MainAction onPress={press} busy={saving.kind === "saving"}>
        {saveWord(saving)}
      </MainAction>
    </>
  );
  return (
    <Frame props={props} title={titleOf(result, isCannot)} action={isCannot ? undefined : action}>
      {isCannot ? (
        <CannotView result={result}>
          <OtherAction
            onPress={() => {
              setTakesBest(true);
            }}
          >
            {say("cannot.best")}
          </OtherAction>
          <OtherAction onPress={changeTarget}>{say("cannot.target")}</OtherAction>
        </CannotView>
      ) : result.plan.pours.length === 0 ? (
        <NothingView result={result} />
      ) : (
        <RecipeView result={result} machine={props.machine.body.machine} />
      )}
      {result.plan.pours.length === 0 ? null : <ShortOfConcentrate {...props} />}
    </Frame>
  );
}

export function RecipeScreen(props: CheckProps) {
  const { machine, walk } = props;
  const answer = useAnswer("plan_check", planBody(machine.body.machine, walk));
  if (answer === null || answer.kind === "dropped") return <Waiting props={props} />;
  if (answer.kind === "down") return <Down props={props} />;
  if (answer.kind === "error") {
    return answer.error.code === "no_factor" ? (
      <NoRecipe {...props} />
    ) : (
      <Refused props={props} error={answer.error} />
    );
  }
  const look = secondLook(answer.result);
  if (!look.agrees)
    return <Disagreed props={props} result={answer.result} found_pct={look.found_pct} />;
  const doubt = openDoubt(answer.result, walk.kept);
  return doubt === null ? (
    <Ready props={props} result={answer.result} />
  ) : (
    <Doubted props={props} doubt={doubt} />
  );
}

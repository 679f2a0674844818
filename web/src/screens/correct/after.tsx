// Old beside new, and what follows from it, before anything is saved: nothing is worked out anew silently.
import type { ComponentChildren } from "preact";
import type { DeskError, Doubt, JudgeLookResult } from "../../core/messages";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { DoubtQuestion } from "../../elements/doubt";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { doubtSentence, errorSentence } from "../../words/errors";
import { write } from "../../words/numbers";
import { say } from "../../words/say";
import { Rows } from "../check/look/advice";
import { NotSaved, saveWord } from "../check/notsaved";
import { CoreTrouble } from "../foot";
import { doubtName } from "../gate";
import { address, back, go } from "../route";
import { fieldAt, type Shown } from "./asked";
import { changeDraft } from "./draft";
import { followsOf, shownOf, useAdvice, useOutcome } from "./follows";
import { isAgreed, outcomePairs, type Pair } from "./outcome";
import { correctionOf, useAmending } from "./saving";
import { placeName, type CorrectProps } from "./screen";
import { isTooLong, WhoFields } from "./who";
import { changesOf } from "./written";

/** The new one first; what stood there before is struck, and read out as such. */
export function OldAndNew({ pairs }: { readonly pairs: readonly Pair[] }) {
  return (
    <dl class="answer-list">
      {pairs.map(({ label, was, now }) => (
        <div key={label} class="amend-row">
          <dt>{label}</dt>
          <dd>
            <span class="answer-value">{now}</span>
            {was === undefined || was === now ? null : (
              <del class="amend-was">{say("amend.was", { value: was })}</del>
            )}
          </dd>
        </div>
      ))}
    </dl>
  );
}

function Follows({
  props,
  shown,
}: {
  readonly props: CorrectProps;
  readonly shown: object | null;
}) {
  const { entry } = props;
  const before = "shown" in entry ? entry.shown : null;
  const pairs = outcomePairs(before, shown, "way" in entry ? entry.way : undefined);
  return (
    <section class="amend-follows">
      <h2>{say("amend.follows")}</h2>
      <OldAndNew pairs={pairs} />
      {followsOf(entry).map((text) => (
        <p key={text}>{text}</p>
      ))}
    </section>
  );
}

interface FrameProps {
  readonly props: CorrectProps;
  readonly action?: ComponentChildren;
  readonly children: ComponentChildren;
}

function Frame({ props, action, children }: FrameProps) {
  const { entry, fields, before, after } = props;
  const pairs = changesOf(fields, before, after).map(({ field, was, now }) => ({
    label: field.label,
    was,
    now,
  }));
  return (
    <Page
      title={say("amend.after")}
      place={placeName(entry)}
      onBack={() => {
        back("log", entry.id, "correct");
      }}
      action={action}
    >
      <OldAndNew pairs={pairs} />
      {children}
      <CoreTrouble />
    </Page>
  );
}

function Doubted({ props, doubt }: { readonly props: CorrectProps; readonly doubt: Doubt }) {
  const { entry, fields, draft } = props;
  const field = fieldAt(fields, doubt);
  const name = field?.label ?? say("amend.what");
  return (
    <Frame props={props}>
      <DoubtQuestion
        sentence={doubtSentence(doubt, field?.label)}
        again={say("doubt.change", { field: name })}
        keep={say("doubt.keep", { value: write(doubt.got) })}
        onAgain={() => {
          go("log", entry.id, "correct", ...(field === undefined ? [] : [field.name]));
        }}
        onKeep={() => {
          changeDraft(entry.id, { kept: [...draft.kept, doubtName(doubt)] });
        }}
      />
    </Frame>
  );
}

function Refused({ props, error }: { readonly props: CorrectProps; readonly error: DeskError }) {
  const { entry, fields } = props;
  const field = fieldAt(fields, error);
  return (
    <Frame props={props}>
      <Fault>{errorSentence(error, field?.label)}</Fault>
      <PlaceLink
        to={address("log", entry.id, "correct", ...(field === undefined ? [] : [field.name]))}
      >
        {say("answers.change_this", { field: field?.label ?? say("amend.what") })}
      </PlaceLink>
    </Frame>
  );
}

interface ReadyProps {
  readonly props: CorrectProps;
  /** Null where nothing was measured. */
  readonly result: Shown | null;
  readonly advice: JudgeLookResult | null;
}

function Ready({ props, result, advice }: ReadyProps) {
  const { entry, after, draft } = props;
  const { saving, press } = useAmending(entry);
  const shown = shownOf(entry, result, advice, draft.kept);
  if (shown !== null && !isAgreed(shown))
    return (
      <Frame props={props}>
        <Fault>{say("second.stop")}</Fault>
      </Frame>
    );
  const action = (
    <>
      <NotSaved saving={saving} />
      <MainAction
        busy={saving.kind === "saving"}
        about={JSON.stringify([after, draft.reason, draft.by])}
        onPress={() => {
          if (!isTooLong(draft)) press(correctionOf(entry, draft, after, shown));
        }}
      >
        {saveWord(saving)}
      </MainAction>
    </>
  );
  return (
    <Frame props={props} action={action}>
      <Follows props={props} shown={result === null ? null : shown} />
      {advice === null ? null : <Rows rows={advice.rows} />}
      <div class="told-form">
        <WhoFields
          draft={draft}
          onChange={(change) => {
            changeDraft(entry.id, change);
          }}
        />
      </div>
    </Frame>
  );
}

export function AfterScreen(props: CorrectProps) {
  const { entry, fields, before, after, draft } = props;
  const outcome = useOutcome(entry, after);
  const { isOpen, advice } = useAdvice(before, after);
  if (outcome?.kind === "error") return <Refused props={props} error={outcome.error} />;
  if (outcome?.kind === "ok" && !isOpen) {
    const doubt = outcome.result?.doubts?.find(
      (one) => fieldAt(fields, one) !== undefined && !draft.kept.includes(doubtName(one)),
    );
    if (doubt !== undefined) return <Doubted props={props} doubt={doubt} />;
    return <Ready props={props} result={outcome.result} advice={advice} />;
  }
  return (
    <Frame props={props}>
      <p role="status">{say("recipe.working")}</p>
    </Frame>
  );
}

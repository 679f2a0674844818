// Which of the entries that claim one place count: one, several, all or none.
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { MainAction } from "../../elements/buttons";
import { Fault } from "../../elements/fault";
import { Ticks } from "../../elements/fields/ticks";
import { Page } from "../../elements/page";
import type { Fork } from "../../store/log/forks";
import { say, sayCount } from "../../words/say";
import { NotSaved, saveWord } from "../check/notsaved";
import { isTooLong, WhoFields } from "../correct/who";
import { CoreTrouble } from "../foot";
import { back } from "../route";
import { ALL, choiceOf, NONE, useDeciding, type Choice, type Deciding } from "./saving";
import { lineText, openForks } from "./words";

interface FrameProps {
  readonly title: string;
  readonly deciding: Deciding;
  /** Null while something is missing; then `onMissing` says what. */
  readonly choices: readonly Choice[] | null;
  readonly onMissing?: () => void;
  readonly children: ComponentChildren;
}

function Frame({ title, deciding, choices, onMissing, children }: FrameProps) {
  const { draft, saving, change, press } = deciding;
  return (
    <Page
      title={title}
      onBack={() => {
        back("log", "claimed");
      }}
      action={
        <>
          <NotSaved saving={saving} />
          <MainAction
            busy={saving.kind === "saving"}
            about={JSON.stringify([choices, draft])}
            onPress={() => {
              if (choices === null) onMissing?.();
              else if (!isTooLong(draft)) press(choices);
            }}
          >
            {saveWord(saving)}
          </MainAction>
        </>
      }
    >
      {children}
      <div class="told-form">
        <WhoFields draft={draft} onChange={change} />
      </div>
      <CoreTrouble />
    </Page>
  );
}

export function DecideScreen({ fork }: { readonly fork: Fork }) {
  const before = fork.chosen?.size === 0 ? [NONE] : [...(fork.chosen ?? [])];
  const deciding = useDeciding(fork.name, before);
  const [asked, setAsked] = useState(false);
  const { draft, change } = deciding;
  const values = [...fork.lines.map(({ hash }) => hash), NONE];
  // A line that came in since is not ticked; one that was ticked is still there.
  const ticked = draft.ticked.filter((value) => values.includes(value));
  const tick = (next: readonly string[]): void => {
    const isNew = (value: string): boolean => next.includes(value) && !ticked.includes(value);
    const rest = next.filter((value) => value !== NONE);
    change({ ticked: isNew(NONE) ? [NONE] : rest });
  };
  return (
    <Frame
      title={say("claimed.which")}
      deciding={deciding}
      choices={ticked.length === 0 ? null : [choiceOf(fork, (hash) => ticked.includes(hash))]}
      onMissing={() => {
        setAsked(true);
      }}
    >
      <p>{say("claimed.which_text")}</p>
      {asked && ticked.length === 0 ? <Fault>{say("claimed.missing")}</Fault> : null}
      <Ticks
        labelledBy="question"
        options={[
          ...fork.lines.map((line) => ({ value: line.hash, word: lineText(line) })),
          { value: NONE, word: say("claimed.none") },
        ]}
        chosen={ticked}
        onChange={tick}
      />
    </Frame>
  );
}

/** Of a copied phone that went on: all that was entered on either happened. */
export function DecideAllScreen() {
  const deciding = useDeciding(ALL);
  const open = openForks();
  const lines = new Set(open.flatMap((fork) => fork.lines));
  return (
    <Frame
      title={say("claimed.all")}
      deciding={deciding}
      choices={open.map((fork) => choiceOf(fork, () => true))}
    >
      <p>{sayCount("claimed.all_text", lines.size)}</p>
    </Frame>
  );
}

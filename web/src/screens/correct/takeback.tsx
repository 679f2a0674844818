// Taking an entry back: made at the wrong machine, entered twice, only practice. It stays readable, struck.
import { useState } from "preact/hooks";
import { MainAction } from "../../elements/buttons";
import { Choice } from "../../elements/fields/choice";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import type { AnyEntry } from "../../store/log/entry";
import { say } from "../../words/say";
import { writeMoment } from "../../words/times";
import { isBegun } from "../check/pour/start";
import { NotSaved, saveWord } from "../check/notsaved";
import { back } from "../route";
import { changeDraft, draftOf } from "./draft";
import { entryText } from "./facts";
import { useAmending, withdrawalOf } from "./saving";
import { placeName } from "./screen";
import { isTooLong, WhoFields } from "./who";

const WHYS = ["wrong_machine", "doubled", "practice", "other"] as const;

function whyText(why: (typeof WHYS)[number], text: string): string {
  const word = say(`amend.why_${why}`);
  return text === "" ? word : say("amend.why_more", { why: word, text });
}

/** What it is that goes, and what stays. */
function What({ entry }: { readonly entry: AnyEntry }) {
  return (
    <>
      <p>
        <strong>{entryText(entry)}</strong>
        <br />
        <span class="note">{writeMoment(entry.measured_at)}</span>
      </p>
      <p>{say("amend.take_back_text")}</p>
      {entry.kind === "check" && isBegun(entry) ? <p>{say("amend.take_back_poured")}</p> : null}
    </>
  );
}

function Why({
  id,
  why,
  isMissing,
}: {
  readonly id: string;
  readonly why: (typeof WHYS)[number] | "";
  readonly isMissing: boolean;
}) {
  return (
    <>
      {isMissing ? <Fault>{say("tag.reason_missing")}</Fault> : null}
      <h2 id="amend-why">{say("tell.reason")}</h2>
      <Choice
        name="why"
        labelledBy="amend-why"
        options={WHYS.map((value) => ({ value, word: say(`amend.why_${value}`) }))}
        chosen={why}
        onChoose={(value) => {
          changeDraft(id, { why: value });
        }}
      />
    </>
  );
}

export function TakeBackScreen({ entry }: { readonly entry: AnyEntry }) {
  const draft = draftOf(entry.id).value;
  const [asked, setAsked] = useState(false);
  const { saving, press } = useAmending(entry);
  const why = WHYS.find((one) => one === draft.why);
  const text = draft.reason.trim();
  const word = saving.kind === "open" ? say("amend.take_back_now") : saveWord(saving);
  const store = (): void => {
    if (why === undefined) {
      setAsked(true);
      return;
    }
    if (!isTooLong(draft)) press(withdrawalOf(entry, whyText(why, text)));
  };
  return (
    <Page
      title={say("amend.take_back")}
      place={placeName(entry)}
      onBack={() => {
        back("log", entry.id);
      }}
      action={
        <>
          <NotSaved saving={saving} />
          <MainAction
            busy={saving.kind === "saving"}
            about={JSON.stringify([draft.why, draft.reason, draft.by])}
            onPress={store}
          >
            {word}
          </MainAction>
        </>
      }
    >
      <What entry={entry} />
      <div class="told-form">
        <Why id={entry.id} why={why ?? ""} isMissing={asked && why === undefined} />
        <WhoFields
          draft={draft}
          onChange={(change) => {
            changeDraft(entry.id, change);
          }}
          why="amend.more"
        />
      </div>
    </Page>
  );
}

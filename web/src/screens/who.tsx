// Who answers for the coolant in this shop: one line, as an entry of the log, for every phone that has it.
import { useState } from "preact/hooks";
import { MainAction } from "../elements/buttons";
import { Page } from "../elements/page";
import { TextField } from "../elements/fields/textfield";
import { newId } from "../store/log/ids";
import { opened } from "../store/log/journal";
import { saveFact, whoToAsk } from "../store/written/shop";
import { say } from "../words/say";
import { NotSaved, saveWord } from "./check/notsaved";
import type { Saving } from "./check/save";
import { back } from "./route";

/** As much as the contract lets a short text be. */
const MOST_LETTERS = 80;

function WhoForm() {
  const [id] = useState(newId);
  const [text, setText] = useState(whoToAsk.value);
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const who = text.trim();
  const isLong = who.length > MOST_LETTERS;
  const store = async (): Promise<void> => {
    setSaving({ kind: "saving" });
    const outcome = await saveFact(id, { who_to_ask: who });
    if (outcome.kind === "saved") back();
    else setSaving({ kind: "not_saved", trouble: outcome.trouble });
  };
  return (
    <Page
      title={say("who.title")}
      onBack={() => {
        back();
      }}
      action={
        <MainAction
          about={who}
          busy={saving.kind === "saving"}
          onPress={() => {
            if (isLong || saving.kind === "saving") return;
            if (who === whoToAsk.value) back();
            else void store();
          }}
        >
          {saving.kind === "saving" ? saveWord(saving) : say("who.save")}
        </MainAction>
      }
    >
      <NotSaved saving={saving} />
      <TextField
        id="who"
        label={say("who.label")}
        hint={say("who.hint")}
        number={false}
        text={text}
        fault={
          isLong
            ? say("who.long", { most: String(MOST_LETTERS), got: String(who.length) })
            : undefined
        }
        onText={setText}
      />
      <p class="note">{say("who.empty", { who: say("mishap.who_unset") })}</p>
    </Page>
  );
}

/** The field begins with what is stored, so it waits until the log is read. */
export function WhoScreen() {
  return opened.value.kind === "ready" ? <WhoForm /> : null;
}

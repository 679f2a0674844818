// Who answers for the coolant in this shop: one line, as an entry of the log, for every phone that has it.
import { useState } from "preact/hooks";
import { TextField } from "../../elements/fields/textfield";
import { opened } from "../../store/log/journal";
import { whoToAsk } from "../../store/written/shop";
import { say } from "../../words/say";
import { back } from "../route";
import { FactPage, useFact } from "./fact";

/** As much as the contract lets a short text be. */
const MOST_LETTERS = 80;

function WhoForm() {
  const [text, setText] = useState(whoToAsk.value);
  const { saving, store } = useFact();
  const who = text.trim();
  const isLong = who.length > MOST_LETTERS;
  return (
    <FactPage
      title={say("who.title")}
      about={who}
      saving={saving}
      onSave={() => {
        if (isLong) return;
        if (who === whoToAsk.value) back();
        else void store({ who_to_ask: who });
      }}
    >
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
    </FactPage>
  );
}

/** The field begins with what is stored, so it waits until the log is read. */
export function WhoScreen() {
  return opened.value.kind === "ready" ? <WhoForm /> : null;
}

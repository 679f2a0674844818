// How often the shop wants a check and a clean-out, an entry of the log; read by pycore before it is saved.
import { useState } from "preact/hooks";
import type { ReadQuantityBody, ShopSetContent } from "../../core/messages";
import { TextField } from "../../elements/fields/textfield";
import { opened } from "../../store/log/journal";
import { careOf, typedCare, type CareFact } from "../../store/written/shop";
import { errorSentence } from "../../words/errors";
import { say, type Key } from "../../words/say";
import { useCore } from "../core";
import { back } from "../route";
import { FactPage, useFact } from "./fact";

const FIELDS = [
  { part: "check_every_d", word: "care.check", field: "field.days" },
  { part: "clean_out_every_d", word: "care.clean_out", field: "field.days" },
  { part: "most_lost_pct_d", word: "care.most_lost", field: "field.most_lost" },
] as const satisfies readonly { part: CareFact; word: Key; field: Key }[];

type Form = Readonly<Record<CareFact, string>>;
type Faults = Readonly<Partial<Record<CareFact, string>>>;

/** What was typed anew: the others stay as another phone may set them. */
function changedIn(form: Form): ShopSetContent {
  const changed = FIELDS.filter(({ part }) => form[part].trim() !== careOf(part).trim());
  return Object.fromEntries(changed.map(({ part }) => [part, typedCare(part, form[part])]));
}

/** Reads them, says what is wrong with them, or saves them and goes back. */
function useCare() {
  const core = useCore();
  const { saving, store } = useFact();
  const [form, setForm] = useState<Form>(() => ({
    check_every_d: careOf("check_every_d"),
    clean_out_every_d: careOf("clean_out_every_d"),
    most_lost_pct_d: careOf("most_lost_pct_d"),
  }));
  const [faults, setFaults] = useState<Faults>({});
  const press = async (): Promise<void> => {
    const found: Partial<Record<CareFact, string>> = {};
    let isWaiting = false;
    for (const { part, field } of FIELDS) {
      if (form[part].trim() === "") continue;
      const body: ReadQuantityBody = { ...typedCare(part, form[part]), quantity: part };
      const answer = await core.ask("read_quantity", body);
      if (answer.kind === "error") found[part] = errorSentence(answer.error, say(field));
      isWaiting ||= answer.kind !== "error" && answer.kind !== "ok";
    }
    setFaults(found);
    if (isWaiting || Object.keys(found).length > 0) return;
    const changed = changedIn(form);
    if (Object.keys(changed).length === 0) back();
    else await store(changed);
  };
  const change = (part: CareFact, text: string): void => {
    setForm({ ...form, [part]: text });
    setFaults({});
  };
  return { form, faults, saving, press, change };
}

function CareForm() {
  const { form, faults, saving, press, change } = useCare();
  return (
    <FactPage
      title={say("care.title")}
      about={JSON.stringify(form)}
      saving={saving}
      onSave={() => void press()}
    >
      <p class="note">{say("care.hint")}</p>
      {FIELDS.map(({ part, word }) => (
        <TextField
          key={part}
          id={part}
          label={say(word)}
          hint={say(`${word}_hint`)}
          {...(part === "most_lost_pct_d" ? { unit: "%" } : {})}
          text={form[part]}
          fault={faults[part]}
          onText={(text) => {
            change(part, text);
          }}
        />
      ))}
    </FactPage>
  );
}

/** The form begins with what is stored, so it waits until the log is read. */
export function CareScreen() {
  return opened.value.kind === "ready" ? <CareForm /> : null;
}

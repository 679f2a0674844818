// How often the shop wants a check and a clean-out; read by pycore before it is kept.
import { useState } from "preact/hooks";
import type { ReadQuantityBody, Unit } from "../../core/messages";
import { MainAction } from "../../elements/buttons";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { TextField } from "../../elements/textfield";
import { keepCare, shopCare, type Care } from "../../store/care";
import { errorSentence } from "../../words/errors";
import { say, type Key } from "../../words/say";
import { useCore } from "../core";
import { back } from "../route";

const FIELDS = [
  {
    part: "check",
    word: "care.check",
    quantity: "check_every_d",
    unit: "1",
    field: "field.days",
  },
  {
    part: "cleanOut",
    word: "care.clean_out",
    quantity: "clean_out_every_d",
    unit: "1",
    field: "field.days",
  },
  {
    part: "mostLost",
    word: "care.most_lost",
    quantity: "most_lost_pct_d",
    unit: "%",
    field: "field.most_lost",
  },
] as const satisfies readonly {
  part: keyof Care;
  word: Key;
  quantity: string;
  unit: Unit;
  field: Key;
}[];

type Faults = Readonly<Partial<Record<keyof Care, string>>>;

/** Reads both, says what is wrong with them, or keeps them and goes back. */
function useCare() {
  const core = useCore();
  const [care, setCare] = useState<Care>(shopCare);
  const [faults, setFaults] = useState<Faults>({});
  const [isLost, setLost] = useState(false);
  const press = async (): Promise<void> => {
    const found: Partial<Record<keyof Care, string>> = {};
    let isWaiting = false;
    for (const { part, quantity, unit, field } of FIELDS) {
      if (care[part].trim() === "") continue;
      const body: ReadQuantityBody = { text: care[part], unit, quantity };
      const answer = await core.ask("read_quantity", body);
      if (answer.kind === "error") found[part] = errorSentence(answer.error, say(field));
      isWaiting ||= answer.kind !== "error" && answer.kind !== "ok";
    }
    setFaults(found);
    if (isWaiting || Object.keys(found).length > 0) return;
    if (keepCare(care)) back();
    else setLost(true);
  };
  const change = (part: keyof Care, text: string): void => {
    setCare({ ...care, [part]: text });
    setFaults({});
  };
  return { care, faults, isLost, press, change };
}

export function CareScreen() {
  const { care, faults, isLost, press, change } = useCare();
  return (
    <Page
      title={say("care.title")}
      onBack={() => {
        back();
      }}
      action={
        <MainAction onPress={() => void press()} about={JSON.stringify(care)}>
          {say("care.save")}
        </MainAction>
      }
    >
      <p class="note">{say("care.hint")}</p>
      {isLost ? <Fault>{say("store.other")}</Fault> : null}
      {FIELDS.map(({ part, word, unit }) => (
        <TextField
          key={part}
          id={`care-${part}`}
          label={say(word)}
          hint={say(`${word}_hint`)}
          {...(unit === "1" ? {} : { unit })}
          text={care[part]}
          fault={faults[part]}
          onText={(text) => {
            change(part, text);
          }}
        />
      ))}
    </Page>
  );
}

// A machine found by its label: typed, or carried by the address that a phone scanned.
import { useEffect, useState } from "preact/hooks";
import type { DeskError } from "../../core/messages";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { TextField } from "../../elements/fields/textfield";
import { machineByCode } from "../../store/log/codes";
import { opened } from "../../store/log/journal";
import { errorSentence } from "../../words/errors";
import { say } from "../../words/say";
import { useCore } from "../core";
import { CoreTrouble } from "../foot";
import { emptyError } from "../gate";
import { address, back, replace } from "../route";
import { writeCode } from "./written";

type Found =
  | { readonly kind: "nothing" }
  | { readonly kind: "unknown"; readonly code: string }
  | { readonly kind: "refused"; readonly error: DeskError };

/** Codes that a sign taken for another may have been; those of this phone come first. */
function LookAlikes({ codes }: { readonly codes: readonly string[] }) {
  const known = codes.filter((code) => machineByCode(code) !== undefined);
  const others = codes.filter((code) => machineByCode(code) === undefined);
  if (codes.length === 0) return null;
  const unknown = say("code.alike_unknown", { codes: others.map(writeCode).join(", ") });
  if (known.length === 0)
    return (
      <>
        <p>{unknown}</p>
        <PlaceLink to={address()}>{say("code.list")}</PlaceLink>
      </>
    );
  return (
    <section class="question-part">
      <h2>{say("code.alike")}</h2>
      <div class="answers">
        {known.map((code) => (
          <button
            key={code}
            type="button"
            class="answer"
            onClick={() => {
              const machine = machineByCode(code);
              if (machine !== undefined) replace("machines", machine.machine);
            }}
          >
            <span class="choice-words">
              <span class="choice-word">{writeCode(code)}</span>
              <span class="note">{machineByCode(code)?.body.machine.name}</span>
            </span>
          </button>
        ))}
      </div>
      {others.length === 0 ? null : <p class="note">{unknown}</p>}
    </section>
  );
}

function Unknown({ code }: { readonly code: string }) {
  return (
    <section class="plain-trouble" role="status">
      <p>{say("code.unknown", { code: writeCode(code) })}</p>
      <div class="places">
        <PlaceLink to={address("machines", "new", "name")}>{say("machines.add")}</PlaceLink>
        <PlaceLink to={address()}>{say("code.list")}</PlaceLink>
      </div>
    </section>
  );
}

function useFinding() {
  const core = useCore();
  const [found, setFound] = useState<Found>({ kind: "nothing" });
  const open = (code: string): void => {
    const machine = machineByCode(code);
    if (machine === undefined) setFound({ kind: "unknown", code });
    else replace("machines", machine.machine);
  };
  const find = (text: string): void => {
    if (text.trim() === "") setFound({ kind: "refused", error: emptyError("body.text") });
    // Just as it is stored: no calculator is needed, and the place opens at once.
    else if (machineByCode(text) !== undefined) open(text);
    else
      void core.ask("read_code", { text }).then((answer) => {
        if (answer.kind === "ok") open(answer.result.code);
        else if (answer.kind === "error") setFound({ kind: "refused", error: answer.error });
      });
  };
  return {
    found,
    find,
    forget: () => {
      setFound({ kind: "nothing" });
    },
  };
}

export function CodeScreen({ scanned }: { readonly scanned: string }) {
  const [text, setText] = useState(scanned);
  const { found, find, forget } = useFinding();
  const isRead = opened.value.kind === "ready";
  useEffect(() => {
    // Until the log is read, nobody knows whose code it is.
    if (scanned !== "" && isRead) find(scanned);
  }, [scanned, isRead]);
  const error = found.kind === "refused" ? found.error : null;
  return (
    <Page
      title={say("code.title")}
      onBack={() => {
        back();
      }}
      action={
        <MainAction
          about={text}
          busy={!isRead}
          onPress={() => {
            if (isRead) find(text);
          }}
        >
          {say("code.open")}
        </MainAction>
      }
    >
      <TextField
        id="code"
        label={say("code.label")}
        hint={say("code.hint")}
        text={text}
        number={false}
        fault={error === null ? undefined : errorSentence(error, say("code.field"))}
        onText={(typed) => {
          setText(typed);
          forget();
        }}
      />
      {found.kind === "unknown" ? <Unknown code={found.code} /> : null}
      {error === null ? null : <LookAlikes codes={allowedOf(error)} />}
      <CoreTrouble />
    </Page>
  );
}

function allowedOf({ limit }: DeskError): readonly string[] {
  return (limit.allowed ?? []).filter((code): code is string => typeof code === "string");
}

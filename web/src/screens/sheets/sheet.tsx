// One sheet: chosen paper, what will be printed, Print, and what the printer makes of a millimetre.
import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { Answer } from "../../core/client";
import type { DrawSheetBody, DrawSheetResult } from "../../core/messages";
import { MainAction } from "../../elements/buttons";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { Select } from "../../elements/fields/select";
import { errorSentence } from "../../words/errors";
import { say } from "../../words/say";
import { useAnswer } from "../core";
import { CoreTrouble } from "../foot";
import { CheckLine } from "./checkline";
import { sheetName } from "./kinds";
import { SheetPages } from "./paper";
import { choosePaper, paper, paperPart, PAPERS } from "./settings";

/** A sheet without what the paper decides. */
export type SheetBody = Omit<DrawSheetBody, "paper" | "measured_100_mm" | "decimal_sign">;

interface SheetProps {
  readonly kind: DrawSheetBody["kind"];
  /** Null while something of it is still missing; `children` then say what. */
  readonly body: SheetBody | null;
  readonly place: string | undefined;
  readonly onBack: () => void;
  readonly children?: ComponentChildren;
}

/** Printed is what the browser has closed its own window about, whether or not paper came out. */
function usePrinted(): boolean {
  const [printed, setPrinted] = useState(false);
  useEffect(() => {
    const note = (): void => {
      setPrinted(true);
    };
    window.addEventListener("afterprint", note);
    return () => {
      window.removeEventListener("afterprint", note);
    };
  }, []);
  return printed;
}

function Drawn({ answer }: { readonly answer: Answer<DrawSheetResult> | null }) {
  if (answer === null) return <p role="status">{say("print.drawing")}</p>;
  if (answer.kind === "error") return <Fault>{errorSentence(answer.error)}</Fault>;
  return answer.kind === "down" ? <p role="alert">{say("recipe.down")}</p> : null;
}

export function SheetScreen({ kind, body, place, onBack, children }: SheetProps) {
  const answer = useAnswer(
    "draw_sheet",
    body === null ? null : { ...body, ...paperPart(paper.value) },
  );
  const printed = usePrinted();
  const result = answer?.kind === "ok" ? answer.result : null;
  const name = sheetName(kind);
  return (
    <Page title={name} place={place} layout="sheet" onBack={onBack}>
      <p>{say(`print.${kind}_use`)}</p>
      {children}
      <Select
        id="paper"
        label={say("print.paper")}
        value={paper.value}
        options={PAPERS.map((value) => ({ value, word: say(`print.${value}`) }))}
        onChoose={choosePaper}
      />
      {printed ? <CheckLine paper={paper.value} printed /> : null}
      {body === null ? null : <Drawn answer={answer} />}
      <p class="note">{say("print.full_size")}</p>
      {/* Above the preview, which is higher than a phone: in reach, and over nothing. */}
      <MainAction
        busy={result === null}
        onPress={() => {
          if (result !== null) window.print();
        }}
      >
        {say("print.print")}
      </MainAction>
      {result === null ? null : (
        <SheetPages result={result} name={say("print.preview", { name })} />
      )}
      {printed ? null : <CheckLine paper={paper.value} printed={false} />}
      <CoreTrouble />
    </Page>
  );
}

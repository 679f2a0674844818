// "How long is the line?": what a steel rule says about a print that was not corrected.
import { useState } from "preact/hooks";
import type { DeskError } from "../../core/messages";
import { MainAction } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { TextField } from "../../elements/fields/textfield";
import { errorSentence } from "../../words/errors";
import { fieldById } from "../../words/fields";
import { say } from "../../words/say";
import { useCore } from "../core";
import { CoreTrouble } from "../foot";
import { emptyError } from "../gate";
import { back } from "../route";
import { keepLine, lineOf, LINE_UNIT, type PaperName } from "./settings";
import { CheckLine } from "./checkline";

function useMeasuring(paper: PaperName) {
  const core = useCore();
  const [error, setError] = useState<DeskError | null>(null);
  const keep = async (text: string): Promise<void> => {
    if (text.trim() === "") {
      setError(emptyError("body.measured_100_mm"));
      return;
    }
    // Asked through a sheet that needs no machine: what it would do with the line is the answer.
    const measured_100_mm = { text, unit: LINE_UNIT };
    const answer = await core.ask("draw_sheet", { kind: "log_sheet", paper, measured_100_mm });
    if (answer.kind === "error") setError(answer.error);
    if (answer.kind !== "ok") return;
    keepLine(paper, { text: text.trim(), passes: answer.result.line_passes === true });
    back("print", "log_sheet");
  };
  return { error, setError, keep };
}

/** A print that was fitted to the page is not made up for: that setting is switched off. */
function faultOf(error: DeskError | null): string | undefined {
  if (error === null) return undefined;
  const main = errorSentence(error, fieldById("measured_100_mm").name);
  return error.code === "out_of_range" ? `${main} ${say("print.line_fit")}` : main;
}

export function LineScreen({ paper }: { readonly paper: PaperName }) {
  const [text, setText] = useState("");
  const { error, setError, keep } = useMeasuring(paper);
  const onBack = (): void => {
    back("print", "log_sheet");
  };
  const place = say(`print.${paper}`);
  if (lineOf(paper) !== null)
    return (
      <Page title={say("print.line_title")} place={place} onBack={onBack}>
        <CheckLine paper={paper} printed={false} />
      </Page>
    );
  return (
    <Page
      title={say("print.line_title")}
      place={place}
      onBack={onBack}
      action={
        <MainAction about={text} onPress={() => void keep(text)}>
          {say("go_on")}
        </MainAction>
      }
    >
      <p>{say("print.line_how")}</p>
      <TextField
        id="line"
        label={say("print.line_label")}
        unit={LINE_UNIT}
        text={text}
        fault={faultOf(error)}
        onText={(typed) => {
          setText(typed);
          setError(null);
        }}
      />
      <CoreTrouble />
    </Page>
  );
}

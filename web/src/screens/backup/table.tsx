// The log as a table for a spreadsheet. It is for people and is never read back.
import { useState } from "preact/hooks";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { lines } from "../../store/log/journal";
import { errorSentence } from "../../words/errors";
import { say, sayCount } from "../../words/say";
import { isoWithOffset } from "../../words/times";
import { CoreTrouble } from "../foot";
import { address, back } from "../route";
import { storedLog, useAsked } from "./asked";
import { fileName, giveFile, type Given } from "./give";

export function TableLink() {
  return <PlaceLink to={address("table")}>{say("table.open")}</PlaceLink>;
}

export function TableScreen() {
  const [now] = useState(() => isoWithOffset(new Date()));
  const [given, setGiven] = useState<Given | null>(null);
  const answer = useAsked("write_csv", `${lines.value.length} ${now}`, () => ({
    lines: storedLog().lines,
    now,
  }));
  const table = answer?.kind === "ok" ? answer.result : null;
  const give = async (text: string): Promise<void> => {
    const name = fileName("pailwright-table", now, "csv");
    setGiven(await giveFile(new File([text], name, { type: "text/csv" })));
  };
  return (
    <Page
      title={say("table.title")}
      onBack={() => {
        back("backup");
      }}
      action={
        <MainAction
          busy={table === null}
          onPress={() => {
            if (table !== null) void give(table.text);
          }}
        >
          {say("table.save")}
        </MainAction>
      }
    >
      <p role="status">
        {answer?.kind === "error"
          ? errorSentence(answer.error)
          : table === null
            ? say("backup.preparing")
            : sayCount("table.rows", table.rows)}
      </p>
      {given === null || given === "stopped" ? null : (
        <p role="status" class="said">
          {say("table.given")}
        </p>
      )}
      <p class="note">{say("table.no_backup")}</p>
      <CoreTrouble />
    </Page>
  );
}

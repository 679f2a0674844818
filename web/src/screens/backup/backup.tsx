// Save a backup: the whole log as a file. It is made when the page opens, since a share sheet wants
// the press itself and not an answer some seconds later.
import { useState } from "preact/hooks";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { lines } from "../../store/log/journal";
import { noteExported } from "../../store/log/exported";
import type { Line } from "../../store/log/lines";
import { errorSentence } from "../../words/errors";
import { writeCount } from "../../words/numbers";
import { say, sayCount, type Key } from "../../words/say";
import { isoWithOffset } from "../../words/times";
import { CoreTrouble } from "../foot";
import { address, back } from "../route";
import { storedLog, useAsked } from "./asked";
import { fileName, giveFile, type Given } from "./give";
import { standingSentence } from "./standing";
import { TableLink } from "./table";

const GIVEN: Readonly<Record<Given, Key>> = {
  shared: "backup.shared",
  downloaded: "backup.downloaded",
  stopped: "backup.stopped",
};

interface Prepared {
  readonly file: File;
  readonly count: number;
  readonly now: string;
  readonly lines: readonly Line[];
}

function usePrepared(): { readonly prepared: Prepared | null; readonly trouble: string | null } {
  const [now] = useState(() => isoWithOffset(new Date()));
  const stored = lines.value;
  const answer = useAsked("write_export", `${stored.length} ${now}`, () => ({
    ...storedLog(),
    now,
    build: __BUILD_ID__,
  }));
  if (answer?.kind === "error") return { prepared: null, trouble: errorSentence(answer.error) };
  if (answer?.kind !== "ok") return { prepared: null, trouble: null };
  const { text, lines: count } = answer.result;
  const file = new File([text], fileName("pailwright", now, "txt"), { type: "text/plain" });
  return { prepared: { file, count, now, lines: stored }, trouble: null };
}

const kilobytes = (file: File): string => writeCount(Math.max(1, Math.round(file.size / 1000)));

function Ways() {
  return (
    <div class="places">
      <PlaceLink to={address("take-in")}>{say("takein.open")}</PlaceLink>
      <TableLink />
    </div>
  );
}

export function BackupScreen() {
  const { prepared, trouble } = usePrepared();
  const [given, setGiven] = useState<Given | null>(null);
  const press = async ({ file, now, lines: saved }: Prepared): Promise<void> => {
    const outcome = await giveFile(file);
    if (outcome !== "stopped") noteExported(saved, now);
    setGiven(outcome);
  };
  return (
    <Page
      title={say("backup.title")}
      onBack={() => {
        back();
      }}
      action={
        <MainAction
          busy={prepared === null}
          onPress={() => {
            if (prepared !== null) void press(prepared);
          }}
        >
          {say("backup.save")}
        </MainAction>
      }
    >
      <p>{standingSentence()}</p>
      <p role="status">
        {trouble ??
          (prepared === null
            ? say("backup.preparing")
            : sayCount("backup.file", prepared.count, { size: kilobytes(prepared.file) }))}
      </p>
      {given === null ? null : (
        <p role="status" class="said">
          {say(GIVEN[given])}
        </p>
      )}
      <p class="note">{say("backup.why")}</p>
      <p class="note">{say("backup.readable")}</p>
      <Ways />
      <CoreTrouble />
    </Page>
  );
}

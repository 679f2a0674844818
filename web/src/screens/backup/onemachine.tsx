// The last entries of one machine as a file, from phone to phone without a network.
import { useState } from "preact/hooks";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import type { MachineEntry } from "../../store/log/entry";
import { lines } from "../../store/log/journal";
import type { Line } from "../../store/log/lines";
import { errorSentence } from "../../words/errors";
import { say, sayCount } from "../../words/say";
import { isoWithOffset } from "../../words/times";
import { CoreTrouble } from "../foot";
import { address, back } from "../route";
import { useAsked } from "./asked";
import { fileName, giveFile, type Given } from "./give";

/** Some weeks of checks; whoever needs more takes the whole backup. */
const MOST_ENTRIES = 20;

/** Without its set-up the other phone could not list the machine. */
function linesOf(machine: MachineEntry): readonly Line[] {
  const own = lines.value.filter((line) => line.machine === machine.machine);
  const last = [...own]
    .sort((a, b) => Date.parse(a.wall) - Date.parse(b.wall))
    .slice(-MOST_ENTRIES);
  const setUp = own.filter(({ log, seq }) => log === machine.log && seq === machine.seq);
  return [...new Set([...setUp, ...last])];
}

/** The file as pycore writes it, for handing over and for showing. */
export function useMachineFile(machine: MachineEntry) {
  const [now] = useState(() => isoWithOffset(new Date()));
  const chosen = linesOf(machine);
  const answer = useAsked("write_export", `${machine.machine} ${chosen.length} ${now}`, () => ({
    lines: chosen.map(({ text }) => text),
    now,
    build: __BUILD_ID__,
  }));
  return { answer, now };
}

export function OneMachineScreen({ machine }: { readonly machine: MachineEntry }) {
  const { answer, now } = useMachineFile(machine);
  const [given, setGiven] = useState<Given | null>(null);
  const made = answer?.kind === "ok" ? answer.result : null;
  const give = async (text: string): Promise<void> => {
    const name = fileName("pailwright-machine", now, "txt");
    setGiven(await giveFile(new File([text], name, { type: "text/plain" })));
  };
  return (
    <Page
      title={say("onemachine.title")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", machine.machine);
      }}
      action={
        <MainAction
          busy={made === null}
          onPress={() => {
            if (made !== null) void give(made.text);
          }}
        >
          {say("onemachine.give")}
        </MainAction>
      }
    >
      <p role="status">
        {answer?.kind === "error"
          ? errorSentence(answer.error)
          : made === null
            ? say("backup.preparing")
            : sayCount("onemachine.count", made.lines)}
      </p>
      {given === null || given === "stopped" ? null : (
        <p role="status" class="said">
          {say("onemachine.given")}
        </p>
      )}
      <p class="note">{say("onemachine.how")}</p>
      <PlaceLink to={address("machines", machine.machine, "hand-over", "show")}>
        {say("frames.show")}
      </PlaceLink>
      <p class="note">{say("onemachine.no_backup")}</p>
      <CoreTrouble />
    </Page>
  );
}

// The page of what was poured or read again.
import { Page } from "../../elements/page";
import { readAtOf } from "../../store/log/dueparts";
import type { DeedEntry } from "../../store/log/entry";
import { machineById } from "../../store/log/machines";
import { unmixedAt } from "../../store/log/mixing";
import { say } from "../../words/say";
import { StateView } from "../check/without/stateview";
import { deedFacts, deedWord } from "../correct/facts";
import { AmendedPart, AmendLinks } from "../correct/marks";
import { timeOf } from "../now";
import { Facts, Versions, When } from "./parts";

export function DeedEntryScreen({
  deed,
  onBack,
}: {
  readonly deed: DeedEntry;
  readonly onBack: () => void;
}) {
  const name = machineById(deed.machine)?.body.machine.name;
  const isRead = deed.kind === "recheck" && deed.body.reading !== undefined;
  // Read too early it is no advice on what to pour next.
  const unmixed = isRead ? unmixedAt(deed.machine, readAtOf(deed), deed.place) : null;
  return (
    <Page title={deedWord(deed)} place={name} onBack={onBack}>
      <When entry={deed} />
      <AmendedPart entry={deed} />
      <Facts facts={deedFacts(deed)} />
      {unmixed === null ? null : (
        <p class="plain-lead">{say("compact.unmixed", { due: timeOf(unmixed.due_at) })}</p>
      )}
      {isRead && unmixed === null ? (
        <StateView assessment={deed.shown.assessment} machine={deed.body.machine} />
      ) : null}
      <AmendLinks entry={deed} />
      <Versions entry={deed} />
    </Page>
  );
}

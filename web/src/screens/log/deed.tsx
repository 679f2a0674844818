// The page of what was poured or read again.
import { Page } from "../../elements/page";
import { readAtOf } from "../../store/log/dueparts";
import type { DeedEntry } from "../../store/log/entry";
import { machineById } from "../../store/log/machines";
import { unmixedAt } from "../../store/log/mixing";
import { write } from "../../words/numbers";
import { say } from "../../words/say";
import { StateView } from "../check/without/stateview";
import { deedFacts, deedWord } from "../correct/facts";
import { AmendedPart, AmendLinks } from "../correct/marks";
import { timeOf } from "../now";
import type { Fact } from "../setup/facts";
import { Facts, Versions, When } from "./parts";

/** The number that was read, where it is no ground for what to do next. */
function strengthFact(deed: DeedEntry): readonly Fact[] {
  const shown = deed.kind === "recheck" ? deed.shown.assessment.strength?.shown : undefined;
  return shown?.strength === undefined ? [] : [[say("amend.strength"), write(shown.strength)]];
}

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
      {unmixed === null ? null : (
        <p class="plain-lead">{say("compact.unmixed", { due: timeOf(unmixed.due_at) })}</p>
      )}
      <Facts
        facts={unmixed === null ? deedFacts(deed) : [...deedFacts(deed), ...strengthFact(deed)]}
      />
      {isRead && unmixed === null ? (
        <StateView assessment={deed.shown.assessment} machine={deed.body.machine} />
      ) : null}
      <AmendLinks entry={deed} />
      <Versions entry={deed} />
    </Page>
  );
}

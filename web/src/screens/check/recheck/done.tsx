// A second reading that stands in the log, or the word that there will be none.
import type { RecheckResult } from "../../../core/messages";
import { PlaceLink } from "../../../elements/buttons";
import type { MachineEntry } from "../../../store/log/entry";
import { readAtOf } from "../../../store/log/dueparts";
import { dueRecheck, unmixedAt } from "../../../store/log/mixing";
import { say } from "../../../words/say";
import { writeMoment } from "../../../words/times";
import { address } from "../../route";
import { dueWords } from "../../tasks";
import { useDeed } from "../deed";
import { SavedPage } from "../savedpage";
import { RecheckView } from "./view";

export function DoneScreen({
  machine,
  id,
}: {
  readonly machine: MachineEntry;
  readonly id: string;
}) {
  const entry = useDeed(id, "recheck");
  if (entry === null) return null;
  const isEarly = unmixedAt(machine.machine, readAtOf(entry), entry.place) !== null;
  const due = dueRecheck(machine.machine);
  const isRead = entry.body.reading !== undefined;
  const time = writeMoment(entry.measured_at);
  return (
    <SavedPage machine={machine}>
      <p role="status">{isRead ? say("recheck.saved", { time }) : say("recheck.saved_skipped")}</p>
      {due === undefined ? null : <p class="saved-next">{dueWords(due)}</p>}
      {isRead ? <RecheckView result={entry.shown as RecheckResult} isEarly={isEarly} /> : null}
      <PlaceLink to={address("machines", machine.machine)}>{machine.body.machine.name}</PlaceLink>
    </SavedPage>
  );
}

// A pour that stands in the log: what went in, and when the second reading is due.
import { PlaceLink } from "../../../elements/buttons";
import type { MachineEntry } from "../../../store/log/entry";
import { recentDeeds } from "../../../store/log/journal";
import { say } from "../../../words/say";
import { writeMoment } from "../../../words/times";
import { timeOf } from "../../now";
import { address } from "../../route";
import { useDeed } from "../deed";
import { SavedPage } from "../savedpage";
import { RowList } from "./rows";

export function DoneScreen({
  machine,
  id,
}: {
  readonly machine: MachineEntry;
  readonly id: string;
}) {
  const entry = useDeed(id, "pour");
  if (entry === null) return null;
  const { plan, pours, finished, recheck_due_at: due } = entry.body;
  const isPart = recentDeeds.value.some(
    (deed) => deed.kind === "pour" && deed.body.plan === plan && deed.id !== id,
  );
  return (
    <SavedPage machine={machine}>
      <p role="status">{say("pour.saved_when", { time: writeMoment(entry.measured_at) })}</p>
      {due === undefined ? null : (
        <>
          <p class="saved-next">{say("recheck.due", { time: timeOf(due) })}</p>
          <p>{say("recheck.run_until")}</p>
        </>
      )}
      {finished ? null : <p class="saved-next">{say("stop.rest_waits")}</p>}
      <RowList rows={pours} isPart={isPart} />
      <div class="places">
        <PlaceLink to={address("machines", machine.machine)}>{machine.body.machine.name}</PlaceLink>
        {finished ? null : (
          <PlaceLink to={address("machines", machine.machine, "pour")}>
            {say("pour.go_on")}
          </PlaceLink>
        )}
      </div>
    </SavedPage>
  );
}

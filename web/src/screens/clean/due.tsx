// On the machine's own page: what of its log speaks for a clean-out, by the decision table and the interval.
import { PlaceLink } from "../../elements/buttons";
import { cleaningOf } from "../../store/underway/cleaning";
import type { MachineEntry } from "../../store/log/entry";
import { cleanOutReason } from "../../words/codes";
import { say } from "../../words/say";
import { useLookBack } from "../check/lookback";
import { address } from "../route";

export function CleanOutDue({ machine }: { readonly machine: MachineEntry }) {
  const answer = useLookBack(machine);
  if (answer?.kind !== "ok" || !answer.result.clean_out_due) return null;
  // Under way, it stands among the places.
  if (cleaningOf(machine.machine).value !== null) return null;
  return (
    <section class="task">
      <h2>{say("clean.due")}</h2>
      <ul class="facts">
        {answer.result.clean_out.map((code) => (
          <li key={code}>{cleanOutReason(code)}</li>
        ))}
      </ul>
      <PlaceLink to={address("machines", machine.machine, "clean-out")}>
        {say("clean.title")}
      </PlaceLink>
    </section>
  );
}

// On the machine's own page: what of its log speaks for a clean-out, by the decision table and the interval.
import type { CleanOutReasons } from "../../core/messages";
import { PlaceLink } from "../../elements/buttons";
import { cleaningOf } from "../../store/underway/cleaning";
import type { MachineEntry } from "../../store/log/entry";
import { cleanOutReason } from "../../words/codes";
import { say } from "../../words/say";
import { useLookBack } from "../check/lookback";
import { address } from "../route";

/** A dip slide that only wants to be looked into is no clean-out. */
export const isCleanOutDue = (reasons: CleanOutReasons): boolean =>
  reasons.some((why) => why !== "germs_review");

export function CleanOutDue({ machine }: { readonly machine: MachineEntry }) {
  const answer = useLookBack(machine);
  const reasons = answer?.kind === "ok" ? answer.result.clean_out : [];
  // Under way, it stands among the places.
  if (!isCleanOutDue(reasons) || cleaningOf(machine.machine).value !== null) return null;
  return (
    <section class="task">
      <h2>{say("clean.due")}</h2>
      <ul class="facts">
        {reasons.map((code) => (
          <li key={code}>{cleanOutReason(code)}</li>
        ))}
      </ul>
      <PlaceLink to={address("machines", machine.machine, "clean-out")}>
        {say("clean.title")}
      </PlaceLink>
    </section>
  );
}

// On the machine's own page: what of its log speaks for a clean-out, by the decision table and the interval.
import type { CheckDue } from "../../core/messages";
import { PlaceLink } from "../../elements/buttons";
import { cleaningOf } from "../../store/underway/cleaning";
import { cleanOutReason } from "../../words/codes";
import { say } from "../../words/say";
import { address } from "../route";

interface CleanOutDueProps {
  readonly machine: string;
  /** Of this machine; undefined until pycore has answered. */
  readonly due: CheckDue | undefined;
}

/** Told also while the machine rests, which is a good time for it. */
export function CleanOutDue({ machine, due }: CleanOutDueProps) {
  const reasons = due?.clean_out ?? [];
  if (reasons.length === 0 || cleaningOf(machine).value !== null) return null;
  return (
    <section class="task">
      <h2>{say("clean.due")}</h2>
      <ul class="facts">
        {reasons.map((code) => (
          <li key={code}>{cleanOutReason(code)}</li>
        ))}
      </ul>
      <PlaceLink to={address("machines", machine, "clean-out")}>{say("clean.title")}</PlaceLink>
    </section>
  );
}

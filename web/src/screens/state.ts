import type { CheckEntry, RecheckEntry } from "../store/log/entry";
import type { State } from "../words/codes";

/** The state that pycore gave at the last check; without a per cent there is none. */
export function stateOf(check: CheckEntry | RecheckEntry | undefined): State {
  return check?.shown.assessment.strength?.state ?? "none";
}

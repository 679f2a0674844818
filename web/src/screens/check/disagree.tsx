// A recipe whose own amounts do not give what it promises is not shown: only the two numbers are.
import type { PlanCheckResult } from "../../core/messages";
import { StateMark } from "../../elements/statemark";
import { writeDecimal, withUnit, write } from "../../words/numbers";
import { say } from "../../words/say";

export function Disagree({
  result,
  found_pct,
}: {
  readonly result: PlanCheckResult;
  readonly found_pct: number;
}) {
  const promised = result.shown.strength;
  const found = withUnit(writeDecimal(found_pct, promised.decimals, promised.decimals + 1), "%");
  return (
    <section class="plain-page" role="alert">
      <StateMark state="stop" />
      <p class="plain-lead">{say("second.text", { promised: write(promised), found })}</p>
      <p>{say("second.stop")}</p>
    </section>
  );
}

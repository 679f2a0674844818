import { say } from "../../../words/say";
import type { SetupProps } from "../steps";
import { PerCents } from "./percents";

const PARTS = ["strong", "weak", "closeness"] as const;

export function LimitsStep(props: SetupProps) {
  return (
    <PerCents
      {...props}
      group="mixing"
      title={say("limits.title")}
      hint={say("limits.hint")}
      why={say("limits.why")}
      parts={PARTS.map((part) => ({
        part,
        label: say(`limits.${part}`),
        hint: say(`limits.${part}_hint`),
      }))}
    />
  );
}

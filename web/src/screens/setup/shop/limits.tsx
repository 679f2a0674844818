import { say } from "../../../words/say";
import type { SetupProps } from "../steps";
import { PerCents } from "./percents";

const PARTS = ["strong", "weak", "closeness"] as const;

export function LimitsStep(props: SetupProps) {
  return (
    <PerCents
      {...props}
      group="mixing"
      title={say("mixing.title")}
      hint={say("mixing.hint")}
      why={say("mixing.why")}
      parts={PARTS.map((part) => ({
        part,
        label: say(`mixing.${part}`),
        hint: say(`mixing.${part}_hint`),
      }))}
    />
  );
}

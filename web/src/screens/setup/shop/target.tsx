import { say } from "../../../words/say";
import type { SetupProps } from "../steps";
import { PerCents } from "./percents";

const PARTS = ["low", "aim", "high"] as const;

export function TargetStep(props: SetupProps) {
  return (
    <PerCents
      {...props}
      group="target"
      title={say("setup_target.title")}
      hint={say("setup_target.hint")}
      why={say("setup_target.why")}
      parts={PARTS.map((part) => ({ part, label: say(`setup_target.${part}`) }))}
    />
  );
}

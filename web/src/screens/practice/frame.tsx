// The frame of a page of practice: hatched under its bar and named in it, so that nobody takes it for a
// real machine.
import type { ComponentChildren } from "preact";
import { Page } from "../../elements/page";
import type { DealPracticeResult } from "../../core/messages";
import { say } from "../../words/say";

interface FrameProps {
  readonly deal: DealPracticeResult;
  readonly title: string;
  readonly step: string;
  readonly layout?: "plain" | "question";
  readonly side?: ComponentChildren;
  readonly onBack: () => void;
  readonly action?: ComponentChildren;
  readonly children: ComponentChildren;
}

export function PracticeFrame({ deal, layout = "plain", ...rest }: FrameProps) {
  const machine = say(`practice.machine.${deal.kind}`);
  return (
    <div class="practice">
      <Page {...rest} layout={layout} place={say("practice.mark", { machine })} />
    </div>
  );
}

// Possible but unusual: asked once, with two equal ways on. What was typed stays either way.
import { useLayoutEffect, useRef } from "preact/hooks";
import { say } from "../words/say";
import { useGuard } from "./guard";

interface DoubtProps {
  readonly sentence: string;
  readonly again: string;
  readonly keep: string;
  readonly onAgain: () => void;
  readonly onKeep: () => void;
}

export function DoubtQuestion({ sentence, again, keep, onAgain, onKeep }: DoubtProps) {
  const text = useRef<HTMLHeadingElement>(null);
  const pressAgain = useGuard(onAgain);
  const pressKeep = useGuard(onKeep);
  // The question replaces what was just pressed, so it takes the focus with it.
  useLayoutEffect(() => {
    text.current?.focus();
  }, []);
  return (
    <section class="doubt" aria-label={say("doubt.name")}>
      <h2 ref={text} tabIndex={-1}>
        {sentence}
      </h2>
      <div class="two-equal">
        <button type="button" class="equal" onClick={pressAgain}>
          {again}
        </button>
        <button type="button" class="equal" onClick={pressKeep}>
          {keep}
        </button>
      </div>
    </section>
  );
}

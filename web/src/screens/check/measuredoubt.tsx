import { DoubtQuestion } from "../../elements/doubt";
import { doubtSentence } from "../../words/errors";
import { write } from "../../words/numbers";
import { say } from "../../words/say";
import type { Gate } from "../gate";

interface MeasureDoubtProps {
  readonly gate: Gate;
  readonly field: string;
  readonly again: string;
}

/** Takes the place of the keys, so that nothing is poured from a number nobody looked at twice. */
export function MeasureDoubt({ gate, field, again }: MeasureDoubtProps) {
  if (gate.doubt === null) return null;
  return (
    <DoubtQuestion
      sentence={doubtSentence(gate.doubt, field)}
      again={again}
      keep={say("doubt.keep", { value: write(gate.doubt.got) })}
      onAgain={gate.again}
      onKeep={gate.keep}
    />
  );
}

// The mix that this machine is usually topped up with, asked where the log does not tell it.
import { useState } from "preact/hooks";
import { Keypad } from "../../../elements/fields/keypad";
import { ToolDrawing } from "../../../elements/drawings/tools";
import { say } from "../../../words/say";
import { isoWithOffset } from "../../../words/times";
import { useCore } from "../../core";
import { checkOf, emptyError, useGate } from "../../gate";
import { AskNumber, onlyAt } from "../asknumber";
import { holdBody } from "./holdbody";
import type { CheckProps } from "../steps";

const PATH = "body.usual";

export function UsualScreen(props: CheckProps) {
  const { machine, walk, change, next } = props;
  const core = useCore();
  const [now] = useState(() => isoWithOffset(new Date()));
  const gate = useGate({
    plain: walk.usual.trim() === "" ? [emptyError(PATH)] : [],
    // Without the last check: whatever is wrong there, this number can be looked at.
    look: () =>
      core
        .ask("hold_check", holdBody(machine, walk, now, false), "usual")
        .then((answer) => onlyAt(checkOf(answer), PATH)),
    kept: walk.kept,
    onKept: (kept) => {
      change({ kept });
    },
    onPass: next,
    about: walk.usual,
  });
  const onText = (usual: string): void => {
    change({ usual });
  };
  return (
    <AskNumber
      {...props}
      title={say("usual.title")}
      hint={say("usual.hint")}
      why={say("usual.why")}
      field={say("field.usual")}
      unit="%"
      text={walk.usual}
      onText={onText}
      gate={gate}
      drawing={<ToolDrawing tool="jug" />}
      keys={<Keypad text={walk.usual} sign="decimal" onText={onText} />}
    />
  );
}

// How warm the prism is: asked only for an instrument that does not correct for it.
import { SideAction } from "../../../elements/buttons";
import { Keypad } from "../../../elements/fields/keypad";
import { ToolDrawing } from "../../../elements/drawings/tools";
import { assessBody, warmthUnit } from "../../../store/underway/walk";
import { say } from "../../../words/say";
import { useCore } from "../../core";
import { checkOf, emptyError, useGate } from "../../gate";
import { AskNumber, onlyAt } from "../asknumber";
import type { CheckProps } from "../steps";

const PATH = "body.reading.temperature";

export function WarmthScreen(props: CheckProps) {
  const { machine, walk, change, next } = props;
  const typed = machine.body.machine;
  const core = useCore();
  const gate = useGate({
    plain: walk.temperature.trim() === "" ? [emptyError(PATH)] : [],
    look: () =>
      core
        .ask("assess_sump", assessBody(typed, walk, { dip: false, reading: true }), "warmth")
        .then((answer) => onlyAt(checkOf(answer), PATH)),
    kept: walk.kept,
    onKept: (kept) => {
      change({ kept });
    },
    onPass: next,
    about: walk.temperature,
  });
  const onText = (temperature: string): void => {
    change({ temperature });
  };
  const skip = (): void => {
    change({ temperature: "" });
    next();
  };
  return (
    <AskNumber
      {...props}
      title={say("warmth.title")}
      hint={say("warmth.hint")}
      why={say("warmth.why")}
      field={say("field.temperature")}
      unit={warmthUnit(typed)}
      text={walk.temperature}
      onText={onText}
      gate={gate}
      side={<SideAction onPress={skip}>{say("warmth.none")}</SideAction>}
      drawing={<ToolDrawing tool="thermometer" />}
      keys={<Keypad text={walk.temperature} sign="decimal" onText={onText} />}
    />
  );
}

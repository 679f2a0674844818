// The second dip of a divided tank. Sides that stand apart at rest mean a blocked screen, and then
// more coolant is the wrong answer.
import { Fault } from "../../../elements/fault";
import { SectionDrawing } from "../../../elements/drawings/section";
import { assessBody } from "../../../store/underway/walk";
import { noteSentence } from "../../../words/codes";
import { say } from "../../../words/say";
import { useAnswer, useCore } from "../../core";
import { checkOf, emptyError, useGate } from "../../gate";
import { AskNumber } from "../asknumber";
import { DepthPad } from "./depthpad";
import { useInchParts } from "./inchparts";
import type { CheckProps } from "../steps";

function useCleanSide({ machine, walk, change, next }: CheckProps) {
  const core = useCore();
  const isEmpty = walk.cleanSide.trim() === "";
  const body = assessBody(machine.body.machine, walk, { dip: true, reading: false });
  const answer = useAnswer("assess_sump", isEmpty ? null : body);
  const gate = useGate({
    plain: isEmpty ? [emptyError("body.dip.clean_side")] : [],
    look: () => core.ask("assess_sump", body, "dip").then(checkOf),
    kept: walk.kept,
    onKept: (kept) => {
      change({ kept });
    },
    onPass: next,
    about: walk.cleanSide,
  });
  return { gate, result: answer?.kind === "ok" ? answer.result : null };
}

export function CleanSideScreen(props: CheckProps) {
  const { machine, walk, change } = props;
  const unit = machine.body.machine.units.stick;
  const { gate, result } = useCleanSide(props);
  const { parts, onBack, action } = useInchParts(unit, walk.cleanSide, props.onBack);
  const onText = (cleanSide: string): void => {
    change({ cleanSide });
  };
  return (
    <AskNumber
      {...props}
      onBack={onBack}
      action={action}
      title={say("clean_side.title")}
      hint={parts ? say("dip.parts_hint") : say("clean_side.hint")}
      why={say("clean_side.why")}
      field={say("field.clean_side")}
      unit={unit}
      text={walk.cleanSide}
      onText={onText}
      gate={gate}
      drawing={
        <SectionDrawing
          name={say("machine.drawing")}
          size="small"
          stick
          section={result?.section ?? null}
        />
      }
      keys={
        <>
          {result?.notes.includes("screen_blocked") === true ? (
            <Fault>{noteSentence("screen_blocked")}</Fault>
          ) : null}
          <DepthPad unit={unit} text={walk.cleanSide} parts={parts} onText={onText} />
        </>
      }
    />
  );
}

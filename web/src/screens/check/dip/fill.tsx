// To which mark this once: a depth below the full mark. Empty means the full mark, as always.
import { SideAction } from "../../../elements/buttons";
import { SectionDrawing } from "../../../elements/drawings/section";
import { assessBody, markBody, planBody } from "../../../store/underway/walk";
import { write } from "../../../words/numbers";
import { say } from "../../../words/say";
import { useCore, useResult } from "../../core";
import { checkOf, useGate } from "../../gate";
import { AskNumber, NOTHING_WRONG, onlyAt } from "../asknumber";
import { DepthPad } from "./depthpad";
import { dimensionOf } from "./dip";
import { useInchParts } from "./inchparts";
import type { CheckProps } from "../steps";

function useFill({ machine, walk, change, next }: CheckProps) {
  const core = useCore();
  const typed = machine.body.machine;
  const isFull = walk.fill.trim() === "";
  const gate = useGate({
    plain: [],
    look: () =>
      isFull
        ? Promise.resolve(NOTHING_WRONG)
        : core
            .ask("plan_check", planBody(typed, walk), "fill")
            .then((answer) => onlyAt(checkOf(answer), "body.fill_to_depth")),
    kept: walk.kept,
    onKept: (kept) => {
      change({ kept });
    },
    onPass: next,
    about: walk.fill,
  });
  // Drawn as if the coolant stood there already: a slip of a digit shows as a wrong level.
  const body = markBody(typed, walk.fill);
  const now = assessBody(typed, walk, { dip: true, reading: false });
  return {
    gate,
    result: useResult("assess_sump", isFull ? null : body),
    before: useResult("assess_sump", walk.dip.trim() === "" ? null : now)?.section ?? null,
  };
}

function FillDrawing({ result, before }: Pick<ReturnType<typeof useFill>, "result" | "before">) {
  const depth = result?.level?.shown.depth;
  return (
    <SectionDrawing
      name={
        depth === undefined
          ? say("fill.drawing_empty")
          : say("fill.drawing", { depth: write(depth) })
      }
      size="small"
      stick
      section={result?.section ?? null}
      before={before}
      dimension={depth === undefined ? undefined : dimensionOf(depth)}
    />
  );
}

export function FillScreen(props: CheckProps) {
  const { machine, walk, change, next } = props;
  const unit = machine.body.machine.units.stick;
  const { parts, onBack, action } = useInchParts(unit, walk.fill, props.onBack);
  const { gate, result, before } = useFill(props);
  const full = write(machine.shown.shown.full_depth);
  const volume = result?.level?.shown.volume;
  const onText = (fill: string): void => {
    change({ fill });
  };
  const toFull = (): void => {
    change({ fill: "" });
    next();
  };
  return (
    <AskNumber
      {...props}
      onBack={onBack}
      action={action}
      title={say("fill.title")}
      hint={parts ? say("dip.parts_hint") : say("fill.hint", { full })}
      why={say("fill.why")}
      field={say("field.fill")}
      unit={unit}
      text={walk.fill}
      onText={onText}
      gate={gate}
      side={
        walk.fill === "" ? undefined : (
          <SideAction onPress={toFull}>{say("fill.to_full")}</SideAction>
        )
      }
      drawing={<FillDrawing result={result} before={before} />}
      below={
        <p class="live" role="status">
          {volume === undefined ? "" : say("dip.volume", { volume: write(volume) })}
        </p>
      }
      keys={<DepthPad unit={unit} text={walk.fill} parts={parts} onText={onText} />}
    />
  );
}

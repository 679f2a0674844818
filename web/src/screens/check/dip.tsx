// The dip. The drawing moves with each digit once pycore has answered: a slip of a finger is seen as a
// nearly empty sump.
import { useState } from "preact/hooks";
import { MainAction } from "../../elements/buttons";
import { DoubtQuestion } from "../../elements/doubt";
import { Fault } from "../../elements/fault";
import { joinInches, Sixteenths, splitInches } from "../../elements/inches";
import { Keypad } from "../../elements/keypad";
import { NumberField } from "../../elements/numberfield";
import { Page } from "../../elements/page";
import { SectionDrawing } from "../../elements/section";
import { Hint } from "../../elements/why";
import { assessBody } from "../../store/walk";
import { lastCheck } from "../../store/journal";
import { doubtSentence, errorSentence } from "../../words/errors";
import { unitSign, write, writeNumber, writeTyped } from "../../words/numbers";
import { say } from "../../words/say";
import { writeAgo } from "../../words/times";
import { useAnswer, useCore } from "../core";
import { checkOf, useGate } from "../gate";
import { replace } from "../route";
import type { CheckProps } from "./steps";

function LastDip({ machine }: Pick<CheckProps, "machine">) {
  const check = lastCheck(machine.machine);
  if (check === undefined) return <p class="note">{say("dip.first")}</p>;
  const blanks = {
    value: writeTyped(check.body.dip.depth),
    ago: writeAgo(check.measured_at, new Date()),
  };
  return <p class="note">{say("last_time", blanks)}</p>;
}

interface PadProps extends Pick<CheckProps, "machine" | "walk" | "change"> {
  readonly parts: boolean;
}

/** Millimetres are whole; inches come in two taps, first whole ones and then sixteenths. */
function DipPad({ machine, walk, change, parts }: PadProps) {
  const unit = machine.body.machine.units.stick;
  const inches = unit === "in" ? splitInches(walk.dip) : null;
  if (unit === "in" && parts) {
    const onPart = (part: string): void => {
      change({ dip: joinInches({ whole: inches?.whole ?? "", part }) });
    };
    return <Sixteenths chosen={inches === null ? null : inches.part || "0"} onPart={onPart} />;
  }
  const text = inches === null ? walk.dip : inches.whole;
  const onText = (typed: string): void => {
    change({
      dip:
        inches === null || typed === "" ? typed : joinInches({ whole: typed, part: inches.part }),
    });
  };
  return (
    <Keypad
      text={text}
      sign={unit === "mm" || unit === "in" ? "whole" : "decimal"}
      onText={onText}
    />
  );
}

function useDip({ machine, walk, change, next }: CheckProps) {
  const core = useCore();
  const body = assessBody(machine.body.machine, walk, { dip: true, reading: false });
  const answer = useAnswer("assess_sump", walk.dip.trim() === "" ? null : body);
  const gate = useGate({
    look: () => core.ask("assess_sump", body, "dip").then(checkOf),
    kept: walk.kept,
    onKept: (kept) => {
      change({ kept });
    },
    onPass: next,
    about: walk.dip,
  });
  return { level: answer?.kind === "ok" ? answer.result : null, gate };
}

function DipDrawing({
  machine,
  result,
}: Pick<CheckProps, "machine"> & { readonly result: ReturnType<typeof useDip>["level"] }) {
  const before = lastCheck(machine.machine)?.shown.assessment.section ?? null;
  const depth = result?.level?.shown.depth;
  const name =
    depth === undefined ? say("dip.drawing_empty") : say("dip.drawing", { depth: write(depth) });
  return (
    <SectionDrawing
      name={name}
      size="small"
      stick
      section={result?.section ?? null}
      before={before}
      dimension={
        depth === undefined ? undefined : { number: writeNumber(depth), unit: unitSign(depth.unit) }
      }
    />
  );
}

function Swap({ walk, machine, change }: Pick<CheckProps, "walk" | "machine" | "change">) {
  if (walk.order === "reading_first") return null;
  const swap = (): void => {
    change({ order: "reading_first" });
    replace("machines", machine.machine, "reading");
  };
  return (
    <button type="button" class="swap" onClick={swap}>
      {say("dip.reading_first")}
    </button>
  );
}

export function DipScreen(props: CheckProps) {
  const { machine, walk, change, step, onBack } = props;
  const [parts, setParts] = useState(false);
  const { level, gate } = useDip(props);
  const unit = machine.body.machine.units.stick;
  const error = gate.errors[0];
  const isWhole = unit === "in" && !parts;
  const goOn = (): void => {
    if (isWhole && walk.dip.trim() !== "") setParts(true);
    else gate.pass();
  };
  const volume = level?.level?.shown.volume;
  return (
    <Page
      title={say("dip.title")}
      place={machine.body.machine.name}
      step={step}
      layout="question"
      onBack={onBack}
      side={<Swap walk={walk} machine={machine} change={change} />}
      action={
        gate.doubt === null ? (
          <MainAction onPress={goOn}>{isWhole ? say("dip.to_parts") : say("go_on")}</MainAction>
        ) : undefined
      }
    >
      {error === undefined ? (
        <Hint id="hint" hint={say("dip.hint")} why={say("dip.why")} />
      ) : (
        <Fault id="hint">{errorSentence(error, say("field.dip"))}</Fault>
      )}
      <div class="measure">
        <DipDrawing machine={machine} result={level} />
        <div class="measure-side">
          <NumberField
            labelledBy="question"
            describedBy="hint"
            text={walk.dip}
            unit={unit}
            faulty={error !== undefined}
            onText={(dip) => {
              change({ dip });
            }}
            onEnter={goOn}
          />
          <LastDip machine={machine} />
          <p class="live" role="status">
            {volume === undefined ? "" : say("dip.volume", { volume: write(volume) })}
          </p>
        </div>
      </div>
      {gate.doubt === null ? (
        <DipPad machine={machine} walk={walk} change={change} parts={parts} />
      ) : (
        <DoubtQuestion
          sentence={doubtSentence(gate.doubt, say("field.dip"))}
          again={say("doubt.again")}
          keep={say("doubt.keep", { value: write(gate.doubt.got) })}
          onAgain={gate.again}
          onKeep={gate.keep}
        />
      )}
      {unit === "in" && parts ? (
        <button
          type="button"
          class="other-action"
          onClick={() => {
            setParts(false);
          }}
        >
          {say("dip.to_whole")}
        </button>
      ) : null}
    </Page>
  );
}

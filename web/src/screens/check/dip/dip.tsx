// The dip. The drawing moves with each digit once pycore has answered: a slip of a finger is seen as a
// nearly empty sump.
import { useState } from "preact/hooks";
import type { Shown, Unit } from "../../../core/messages";
import { MainAction, SideAction } from "../../../elements/buttons";
import { Fault } from "../../../elements/fault";
import { NumberField } from "../../../elements/fields/numberfield";
import { Page } from "../../../elements/page";
import { SectionDrawing } from "../../../elements/drawings/section";
import { Hint } from "../../../elements/why";
import { assessBody, dipTyped, dipUnit } from "../../../store/underway/walk";
import { lastDip } from "../../../store/log/deeds";
import { errorSentence } from "../../../words/errors";
import { unitSign, write, writeNumber } from "../../../words/numbers";
import { say } from "../../../words/say";
import { writeAgo } from "../../../words/times";
import { useAnswer, useCore } from "../../core";
import { checkOf, emptyError, useGate } from "../../gate";
import { cardLink } from "../../learn/link";
import { go, replace } from "../../route";
import { DepthPad } from "./depthpad";
import { GaugePad } from "./gaugepad";
import { dipHint, dipName, dipTitle, writeDip } from "./level";
import { MeasureDoubt } from "../measuredoubt";
import type { CheckProps } from "../steps";

function LastDip({ machine }: Pick<CheckProps, "machine">) {
  const last = lastDip(machine.machine);
  if (last === undefined) return <p class="note">{say("dip.first")}</p>;
  const blanks = {
    value: writeDip(last.typed),
    ago: writeAgo(last.entry.measured_at, new Date()),
  };
  return <p class="note">{say("last_time", blanks)}</p>;
}

function useDip({ machine, walk, change, next }: CheckProps) {
  const core = useCore();
  const body = assessBody(machine.body.machine, walk, { dip: true, reading: false });
  const answer = useAnswer("assess_sump", walk.dip.trim() === "" ? null : body);
  const gate = useGate({
    plain: walk.dip.trim() === "" ? [emptyError("body.dip.depth")] : [],
    look: () => core.ask("assess_sump", body, "dip").then(checkOf),
    kept: walk.kept,
    onKept: (kept) => {
      change({ kept });
    },
    onPass: next,
    about: `${walk.dip} ${walk.gaugeTo}`,
  });
  return { level: answer?.kind === "ok" ? answer.result : null, gate };
}

/**
 * Whole inches and their part take a line each, and the unit stays at the field beside it: all in one
 * line would be cut off at the edge of the drawing.
 */
export function dimensionOf(depth: Shown): { number: string; unit: string } {
  const unit = unitSign(depth.unit);
  const { fraction } = depth;
  if (fraction === undefined || fraction.whole === 0) return { number: writeNumber(depth), unit };
  const part = `${fraction.numerator}/${fraction.denominator}`;
  return { number: String(fraction.whole), unit: part };
}

function DipDrawing({
  machine,
  result,
}: Pick<CheckProps, "machine"> & { readonly result: ReturnType<typeof useDip>["level"] }) {
  const before = lastDip(machine.machine)?.entry.shown.assessment.section ?? null;
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
      dimension={depth === undefined ? undefined : dimensionOf(depth)}
    />
  );
}

/** The reading may come first; once it is there, the dip can be left out. */
function Side({ walk, machine, change }: Pick<CheckProps, "walk" | "machine" | "change">) {
  if (walk.order === "reading_first") {
    if (walk.reading.trim() === "" || walk.dip.trim() !== "") return null;
    const leaveOut = (): void => {
      go("machines", machine.machine, "state");
    };
    return <SideAction onPress={leaveOut}>{say("dip.none")}</SideAction>;
  }
  const swap = (): void => {
    change({ order: "reading_first" });
    replace("machines", machine.machine, "reading");
  };
  return <SideAction onPress={swap}>{say("dip.reading_first")}</SideAction>;
}

interface PartProps extends Pick<CheckProps, "machine" | "walk" | "change"> {
  readonly dip: ReturnType<typeof useDip>;
}

interface MeasureProps extends PartProps {
  readonly onEnter: () => void;
  /** Shown instead of the last dip while the parts of an inch are tapped. */
  readonly onWhole: (() => void) | null;
}

function Measure({ machine, walk, change, dip: { level, gate }, onEnter, onWhole }: MeasureProps) {
  const volume = level?.level?.shown.volume;
  const unit = dipUnit(machine.body.machine);
  return (
    <div class={unit === "in" ? "measure measure-inch" : "measure"}>
      <DipDrawing machine={machine} result={level} />
      <div class="measure-side">
        <NumberField
          labelledBy="question"
          describedBy="hint"
          text={walk.dip}
          unit={unit}
          faulty={gate.errors.length > 0}
          onText={(dip) => {
            change({ dip, gaugeTo: "" });
          }}
          onEnter={onEnter}
        />
        {onWhole === null ? (
          <LastDip machine={machine} />
        ) : (
          <button type="button" class="other-action" onClick={onWhole}>
            {say("dip.to_whole")}
          </button>
        )}
        <p class="live" role="status">
          {walk.gaugeTo === "" ? "" : writeDip(dipTyped(machine.body.machine, walk))}{" "}
          {volume === undefined ? "" : say("dip.volume", { volume: write(volume) })}
        </p>
      </div>
    </div>
  );
}

interface AboveProps extends Pick<PartProps, "dip" | "machine"> {
  readonly parts: boolean;
}

function Above({ dip, machine, parts }: AboveProps) {
  const typed = machine.body.machine;
  const error = dip.gate.errors[0];
  if (error !== undefined) {
    return <Fault id="hint">{errorSentence(error, dipName(typed))}</Fault>;
  }
  if (!parts)
    return <Hint id="hint" hint={dipHint(typed)} why={say("dip.why")} more={cardLink("dip")} />;
  return (
    <p id="hint" class="note">
      {say("dip.parts_hint")}
    </p>
  );
}

interface KeysProps extends Pick<CheckProps, "walk" | "change"> {
  readonly unit: Unit;
  readonly parts: boolean;
}

function Keys({ walk, change, unit, parts }: KeysProps) {
  if (unit === "1") return <GaugePad walk={walk} change={change} />;
  return (
    <DepthPad
      unit={unit}
      text={walk.dip}
      parts={parts}
      onText={(dip) => {
        change({ dip });
      }}
    />
  );
}

export function DipScreen(props: CheckProps) {
  const { machine, walk, change, step, onBack } = props;
  const [wantsParts, setParts] = useState(false);
  const dip = useDip(props);
  const { doubt } = dip.gate;
  const typed = machine.body.machine;
  const unit = dipUnit(typed);
  const isInch = unit === "in";
  const parts = isInch && wantsParts;
  const goOn = (): void => {
    if (isInch && !parts && walk.dip.trim() !== "") setParts(true);
    else dip.gate.pass();
  };
  const toWhole = (): void => {
    setParts(false);
  };
  const word = isInch && !parts ? say("dip.to_parts") : say("go_on");
  const common = { machine, walk, change };
  const action = (
    <MainAction onPress={goOn} about={word + walk.dip}>
      {word}
    </MainAction>
  );
  return (
    <Page
      title={dipTitle(typed)}
      place={typed.name}
      step={step}
      layout="question"
      onBack={parts ? toWhole : onBack}
      side={props.beside === true ? undefined : <Side {...common} />}
      action={doubt === null ? action : undefined}
    >
      <Above dip={dip} machine={machine} parts={parts} />
      <Measure {...common} dip={dip} onEnter={goOn} onWhole={parts ? toWhole : null} />
      {doubt === null ? (
        <Keys walk={walk} change={change} unit={unit} parts={parts} />
      ) : (
        <MeasureDoubt gate={dip.gate} field={dipName(typed)} again={say("doubt.again")} />
      )}
    </Page>
  );
}

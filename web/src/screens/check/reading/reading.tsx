// The refractometer reading, as it stands on the glass; pycore multiplies it.
import { MainAction, SideAction } from "../../../elements/buttons";
import { Eyepiece } from "../../../elements/drawings/eyepiece";
import { Fault } from "../../../elements/fault";
import { Keypad } from "../../../elements/fields/keypad";
import { NumberField } from "../../../elements/fields/numberfield";
import { Page } from "../../../elements/page";
import { StateMark } from "../../../elements/statemark";
import { Hint } from "../../../elements/why";
import type { AssessSumpResult, DeskError } from "../../../core/messages";
import { lastReading } from "../../../store/log/deeds";
import { assessBody, readingUnit, type Walk } from "../../../store/underway/walk";
import { errorSentence } from "../../../words/errors";
import { write, writeTyped } from "../../../words/numbers";
import { say } from "../../../words/say";
import { isoWithOffset, writeAgo } from "../../../words/times";
import { useAnswer, useCore, useResult } from "../../core";
import { checkOf, emptyError, useGate } from "../../gate";
import { cardLink } from "../../learn/link";
import { go, replace } from "../../route";
import { onlyAt } from "../asknumber";
import { Dilute, NotDiluted } from "./blurred";
import { formula } from "./formula";
import { doubtsByLog } from "../lookback";
import { useNow } from "../../setup/fluid/together";
import { MeasureDoubt } from "../measuredoubt";
import { openDoubts } from "../recipe/recipe";
import type { CheckProps } from "../steps";
import { ZeroNotes } from "./zeronotes";

const READING_PATH = "body.reading.shows";

function LastReading({ machine }: Pick<CheckProps, "machine">) {
  const last = lastReading(machine.machine);
  if (last === undefined) return <p class="note">{say("reading.first")}</p>;
  const blanks = {
    value: writeTyped(last.typed.shows),
    ago: writeAgo(last.entry.measured_at, new Date()),
  };
  return <p class="note">{say("last_time", blanks)}</p>;
}

function useReading({ machine, walk, change, next }: CheckProps) {
  const core = useCore();
  const body = assessBody(machine.body.machine, walk, { dip: false, reading: true });
  const answer = useAnswer("assess_sump", walk.reading.trim() === "" ? null : body);
  const gate = useGate({
    plain: walk.reading.trim() === "" ? [emptyError(READING_PATH)] : [],
    look: async () => {
      const check = onlyAt(checkOf(await core.ask("assess_sump", body, "reading")), READING_PATH);
      if (check === null || check.errors.length > 0) return check;
      const byLog = await doubtsByLog(core, machine, walk);
      return { errors: [], doubts: openDoubts([...check.doubts, ...byLog], walk.kept) };
    },
    kept: walk.kept,
    onKept: (kept) => {
      change({ kept });
    },
    onPass: next,
    about: walk.reading,
  });
  return { result: answer?.kind === "ok" ? answer.result : null, gate };
}

/** With a dip the reading can stay open; without one the dip can still come first. */
function Side({ walk, machine, change }: Pick<CheckProps, "walk" | "machine" | "change">) {
  if (walk.diluted !== "") return <NotDiluted walk={walk} change={change} />;
  const isDipped = walk.dip.trim() !== "";
  if (isDipped && walk.reading.trim() === "") {
    const leaveOpen = (): void => {
      go("machines", machine.machine, "holding");
    };
    return <SideAction onPress={leaveOpen}>{say("reading.none")}</SideAction>;
  }
  if (walk.order === "dip_first") return null;
  const swap = (): void => {
    change({ order: "dip_first" });
    replace("machines", machine.machine, "dip");
  };
  return <SideAction onPress={swap}>{say("reading.dip_first")}</SideAction>;
}

/** The zero's age counts to the moment of the reading, so both change together. */
export function typedNow(reading: string): Partial<Walk> {
  return { reading, at: isoWithOffset(new Date()) };
}

/** Told before anything is read: after the reading it would have to be taken anew. */
export function useZeroNotes(
  { machine, walk }: Pick<CheckProps, "machine" | "walk">,
  result: AssessSumpResult | null,
) {
  const now = useNow();
  const { fluid, instrument } = machine.body.machine;
  const isAsked = instrument !== undefined && walk.reading.trim() === "";
  const body = isAsked ? { fluid, instrument, today: now } : null;
  const early = useResult("read_fluid", body);
  return result?.notes ?? early?.notes ?? [];
}

function Measure({
  machine,
  walk,
  change,
  result,
  faulty,
  onEnter,
}: Pick<CheckProps, "machine" | "walk" | "change"> & {
  readonly result: AssessSumpResult | null;
  readonly faulty: boolean;
  readonly onEnter: () => void;
}) {
  const strength = result?.strength;
  const name =
    strength === undefined
      ? say("reading.drawing_empty")
      : say("reading.drawing", { reading: write(strength.shown.reading) });
  return (
    <div class="measure">
      <Eyepiece name={name} value={strength?.reading_brix.value ?? null} />
      <div class="measure-side">
        <NumberField
          labelledBy="question"
          describedBy="hint"
          text={walk.reading}
          unit={readingUnit(machine.body.machine)}
          faulty={faulty}
          onText={(reading) => {
            change(typedNow(reading));
          }}
          onEnter={onEnter}
        />
        {strength === undefined ? <LastReading machine={machine} /> : null}
        <p class="live" role="status">
          {formula(result)}
          {strength?.state === undefined ? null : <StateMark state={strength.state} />}
        </p>
      </div>
    </div>
  );
}

/** Where the sample comes from, and what is done to the glass. */
export const readingHint = (): string => say("reading.hint");

/** The hint, or what is wrong; beyond the scale the cure is one press away. */
function Above({ error, props }: { error: DeskError | undefined; props: CheckProps }) {
  const isDiluted = props.walk.diluted !== "";
  if (error === undefined) {
    const hint = isDiluted ? say("reading.diluted_hint") : readingHint();
    const why = `${say("reading.sample")} ${say("reading.why")}`;
    return <Hint id="hint" hint={hint} why={why} more={cardLink("factor")} />;
  }
  return (
    <>
      <Fault id="hint">{errorSentence(error, say("field.reading"))}</Fault>
      {error.code === "off_scale" && !isDiluted && props.beside !== true ? (
        <Dilute {...props} />
      ) : null}
    </>
  );
}

export function ReadingScreen(props: CheckProps) {
  const { machine, walk, change, step, onBack } = props;
  const { result, gate } = useReading(props);
  const notes = useZeroNotes(props, result);
  const error = gate.errors[0];
  const isDiluted = walk.diluted !== "";
  return (
    <Page
      title={isDiluted ? say("reading.diluted_title") : say("reading.title")}
      place={machine.body.machine.name}
      step={step}
      layout="question"
      onBack={onBack}
      side={props.beside === true ? undefined : <Side {...{ walk, machine, change }} />}
      action={
        gate.doubt === null ? (
          <MainAction onPress={gate.pass} about={walk.reading}>
            {say("go_on")}
          </MainAction>
        ) : undefined
      }
    >
      <Above error={error} props={props} />
      <Measure
        machine={machine}
        walk={walk}
        change={change}
        result={result}
        faulty={error !== undefined}
        onEnter={gate.pass}
      />
      <ZeroNotes machine={machine} notes={notes} from="reading" />
      {gate.doubt === null ? (
        <Keypad
          text={walk.reading}
          sign="decimal"
          onText={(reading) => {
            change(typedNow(reading));
          }}
        />
      ) : (
        <MeasureDoubt gate={gate} field={say("field.reading")} again={say("doubt.read_again")} />
      )}
    </Page>
  );
}

// One state at a time, as in pouring: what to do, what to mind, what to write down. The button says the
// state that is reached; a tick that could not be written down is not shown.
import { useState } from "preact/hooks";
import { PlaceLink } from "../../elements/buttons";
import { useGuard, useRest } from "../../elements/guard";
import { Page } from "../../elements/page";
import { changeCleaning, type Cleaning } from "../../store/underway/cleaning";
import type { MachineEntry } from "../../store/log/entry";
import { say } from "../../words/say";
import { isoWithOffset, writeMoment } from "../../words/times";
import { NotSaved } from "../check/notsaved";
import type { Saving } from "../check/save";
import { useCore } from "../core";
import { CoreTrouble } from "../foot";
import { address, back } from "../route";
import { useCharge } from "./charge";
import { bucketsToCome, ChargePage } from "./chargepage";
import { StepFields } from "./fields";
import { faultsAt, type Faults } from "./reading";
import { tellState } from "./saving";
import { reached, stepWord, type CleanStep } from "./steps";

interface TickProps {
  readonly machine: MachineEntry;
  readonly cleaning: Cleaning;
  readonly step: CleanStep;
}

const OPEN: Saving = { kind: "open" };

/** What a press does; `leftOut` goes on without the state. */
function useTick({ machine, cleaning, step }: TickProps, toCome: number | null) {
  const core = useCore();
  const id = machine.machine;
  const [faults, setFaults] = useState<Faults>({});
  const [saving, setSaving] = useState<Saving>(OPEN);
  const [isLost, setLost] = useState(false);
  const now = (): string => isoWithOffset(new Date());
  const tick = (leftOut: boolean): void => {
    const mark = leftOut ? { leftOut: true as const } : {};
    const next = { state: step.state, at: now(), ...mark };
    setLost(!changeCleaning(id, { ticks: [...cleaning.ticks, next] }));
  };
  const press = async (): Promise<void> => {
    const isBucket = step.state === "charged" && !cleaning.otherWay && toCome !== 0;
    if (isBucket) {
      if (toCome !== null) setLost(!changeCleaning(id, { buckets: [...cleaning.buckets, now()] }));
      return;
    }
    const found = await faultsAt(core, machine, step.state, cleaning);
    setFaults(found);
    if (Object.keys(found).length > 0) return;
    const told = step.state === "ready" ? await tellState(core, id) : OPEN;
    setSaving(told);
    if (told.kind === "open") tick(false);
  };
  const undo = (): void => {
    const { ticks, buckets } = cleaning;
    const isBucket = step.state === "charged" && !cleaning.otherWay && buckets.length > 0;
    const change = isBucket ? { buckets: buckets.slice(0, -1) } : { ticks: ticks.slice(0, -1) };
    if (isBucket || ticks.length > 0) setLost(!changeCleaning(id, change));
  };
  return {
    faults,
    saving,
    isLost,
    press,
    undo,
    leaveOut: () => {
      tick(true);
    },
  };
}

function Lines({ step, cleaning }: Pick<TickProps, "step" | "cleaning">) {
  const since = cleaning.ticks.find(({ state }) => state === "cleaner_in");
  const last = reached(cleaning.ticks).at(-1);
  return (
    <>
      {last === undefined ? null : (
        <p class="note">
          {say("clean.reached", {
            state: say(`clean.tick_${last.state}`),
            time: writeMoment(last.at),
          })}
        </p>
      )}
      <ul class="ready-list">
        {step.state === "ran" && since !== undefined && since.leftOut !== true ? (
          <li>{say("clean.ran_since", { time: writeMoment(since.at) })}</li>
        ) : null}
        {step.lines.map((line) => (
          <li key={line}>{say(line)}</li>
        ))}
      </ul>
    </>
  );
}

interface ActionProps {
  readonly doing: ReturnType<typeof useTick>;
  readonly word: string;
  readonly about: string;
  readonly isFirst: boolean;
  readonly isWaiting: boolean;
  /** What the press ticks. */
  readonly step: string;
}

/** Undo left, the state right, as in pouring. */
function Actions({ doing, word, step, about, isFirst, isWaiting }: ActionProps) {
  // A second tap would tick what nobody has done yet.
  const isResting = useRest(true, step);
  const guarded = useGuard(() => void doing.press(), about);
  const press = (): void => {
    if (!isResting) guarded();
  };
  return (
    <>
      <NotSaved saving={doing.saving} />
      {doing.isLost ? (
        <p class="not-saved" role="alert">
          <strong>{say("pour.lost")}</strong>
        </p>
      ) : null}
      <div class="tick-row">
        <button type="button" class="undo" aria-disabled={isFirst} onClick={doing.undo}>
          {say("clean.undo")}
        </button>
        <button
          type="button"
          class="main-action"
          aria-disabled={isWaiting || isResting}
          onClick={press}
        >
          {word}
        </button>
      </div>
    </>
  );
}

export function CleanTickScreen(props: TickProps) {
  const { machine, cleaning, step } = props;
  const { state } = step;
  const id = machine.machine;
  const answer = useCharge(machine.body.machine, cleaning);
  const toCome = bucketsToCome({ machine, cleaning, answer });
  const doing = useTick(props, toCome);
  const isBucket = state === "charged" && !cleaning.otherWay && toCome !== 0;
  const next = { n: String(cleaning.buckets.length + 1) };
  return (
    <Page
      title={say(`clean.title_${state}`)}
      place={machine.body.machine.name}
      step={stepWord(step)}
      onBack={() => {
        back("machines", id);
      }}
      action={
        <Actions
          doing={doing}
          word={isBucket ? say("clean.bucket_tick", next) : say(`clean.tick_${state}`)}
          step={`${state} ${next.n}`}
          about={`${state} ${next.n} ${JSON.stringify(cleaning.texts)}`}
          isFirst={cleaning.ticks.length === 0}
          isWaiting={isBucket && toCome === null}
        />
      }
    >
      {state === "charged" ? (
        <ChargePage machine={machine} cleaning={cleaning} answer={answer} />
      ) : null}
      <Lines step={step} cleaning={cleaning} />
      <StepFields machine={machine} state={state} cleaning={cleaning} faults={doing.faults} />
      <div class="places">
        {step.mayLeaveOut ? (
          <button type="button" class="place-link quiet-button" onClick={doing.leaveOut}>
            {say("clean.leave_out")}
          </button>
        ) : null}
        <PlaceLink to={address("machines", id, "clean-out", "stop")}>{say("clean.stop")}</PlaceLink>
      </div>
      <CoreTrouble />
    </Page>
  );
}

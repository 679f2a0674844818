// One state at a time: what to do, large; the button says the state that is reached, and Undo stands
// beside it. A tick that could not be written down is not shown.
import { useState } from "preact/hooks";
import { Aloud } from "../../../elements/aloud";
import { PlaceLink } from "../../../elements/buttons";
import { click } from "../../../elements/click";
import { useRest } from "../../../elements/guard";
import { Page } from "../../../elements/page";
import { PourRow } from "../../../elements/pourrow";
import { changePouring } from "../../../store/underway/pouring";
import { say } from "../../../words/say";
import { isoWithOffset } from "../../../words/times";
import { MishapLink } from "../../mishap/link";
import { address, back } from "../../route";
import { HeldLine } from "../../told/stated";
import { Instruction, Next, spokenOf } from "./instruction";
import type { PourProps } from "./screen";
import { pouredCount, ticksAt, totalBuckets, undone, type Step } from "./steps";
import { useAwake } from "./wake";

function titleOf(step: Step, total: number): string {
  if (step.bucket !== null)
    return say("pour.bucket", { n: String(step.bucket + 1), total: String(total) });
  if (step.state === "ready") return say("pour.ready");
  if (step.state === "run") return say("pour.run");
  return step.state === "out" ? say("pour.out") : say("pour.run_in");
}

function tickWord(step: Step, quick: boolean): string {
  if (quick && step.bucket !== null) return say("pour.tick.bucket", { n: String(step.bucket + 1) });
  return say(`pour.tick.${step.state}`);
}

/** Undo left, the state right: three quarters of the width for what is pressed most. */
function Ticking({ props, step, next }: { props: PourProps; step: Step; next: number }) {
  const { machine, pouring, steps } = props;
  const [isLost, setLost] = useState(false);
  const id = machine.machine;
  // A second tap would tick what nobody has poured yet.
  const isResting = useRest(true, String(next));
  const tick = (): void => {
    if (isResting) return;
    const at = isoWithOffset(new Date());
    const more = ticksAt(steps, next, { whole: pouring.quick, at });
    const isKept = changePouring(id, { ticks: [...pouring.ticks, ...more] });
    setLost(!isKept);
    if (isKept) click(next + more.length < steps.length ? 1 : 2);
  };
  const isFirst = pouring.ticks.length <= pouring.logged;
  return (
    <>
      {isLost ? (
        <p class="not-saved" role="alert">
          <strong>{say("pour.lost")}</strong>
        </p>
      ) : null}
      <div class="tick-row">
        <button
          type="button"
          class="undo"
          aria-disabled={isFirst}
          onClick={() => {
            if (!isFirst) setLost(!changePouring(id, { ticks: undone(pouring.ticks) }));
          }}
        >
          {say("pour.undo")}
        </button>
        <button type="button" class="main-action" aria-disabled={isResting} onClick={tick}>
          {tickWord(step, pouring.quick)}
        </button>
      </div>
    </>
  );
}

interface AsideProps extends Pick<PourProps, "machine" | "pouring"> {
  readonly isBucket: boolean;
  readonly spoken: string;
}

function Aside({ machine, pouring, isBucket, spoken }: AsideProps) {
  const id = machine.machine;
  return (
    <div class="places places-pair">
      <Aloud text={spoken} />
      {isBucket ? (
        <button
          type="button"
          class="place-link quiet-button"
          onClick={() => {
            changePouring(id, { quick: !pouring.quick });
          }}
        >
          {say(pouring.quick ? "pour.slow" : "pour.quick")}
        </button>
      ) : null}
      <PlaceLink to={address("machines", id, "pour", "stop")}>{say("pour.stop")}</PlaceLink>
      <MishapLink machine={id} />
    </div>
  );
}

export function TickScreen(props: PourProps) {
  const { machine, pouring, steps } = props;
  const awake = useAwake();
  const next = pouring.ticks.length;
  const step = steps[next];
  if (step === undefined) return null;
  const total = totalBuckets(steps);
  const title = titleOf(step, total);
  const spoken = spokenOf({ step, machine, quick: pouring.quick, title });
  return (
    <Page
      title={title}
      place={machine.body.machine.name}
      step={say(awake === "on" ? "pour.awake" : "pour.may_sleep")}
      stays={step.state !== "ready"}
      onBack={() => {
        back("machines", machine.machine);
      }}
      action={<Ticking props={props} step={step} next={next} />}
    >
      <HeldLine machine={machine.machine} />
      {step.bucket === null ? null : (
        <PourRow
          steps={steps}
          now={step.bucket}
          poured={pouredCount(steps, pouring.ticks)}
          name={say("pour.row_name", {
            poured: String(pouredCount(steps, pouring.ticks)),
            total: String(total),
          })}
        />
      )}
      <div class="instruction" role="status">
        <Instruction step={step} machine={machine} quick={pouring.quick} />
      </div>
      <Next step={pouring.quick ? undefined : steps[next + 1]} now={step} />
      <Aside machine={machine} pouring={pouring} isBucket={step.bucket !== null} spoken={spoken} />
    </Page>
  );
}

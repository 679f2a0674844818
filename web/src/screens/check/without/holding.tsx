// A dip without a reading: fill up at the usual strength, say how far off it may be, leave the reading open.
import { useEffect, useState } from "preact/hooks";
import type { HoldCheckResult } from "../../../core/messages";
import { addsUp } from "../../../core/secondlook";
import { MainAction } from "../../../elements/buttons";
import { StateMark } from "../../../elements/statemark";
import { isoWithOffset } from "../../../words/times";
import { say } from "../../../words/say";
import { useAnswer } from "../../core";
import { address, replace } from "../../route";
import { CheckFrame, TryAgain } from "../checkframe";
import { holdBody } from "./holdbody";
import { HoldingView } from "./holdingview";
import { SaveAction } from "../notsaved";
import { Doubted, Down, openDoubt, Refused, Waiting } from "../recipe/recipe";
import { useSavingOf, type Answered } from "../save";
import type { CheckProps } from "../steps";

/**
 * The log does not tell the usual mix: there is no recipe, or the last one corrected the strength
 * and its mix would push a sump that is right now out of its range. So it is asked for, and Back
 * leads past here.
 */
function AskUsual({ id }: { readonly id: string }) {
  useEffect(() => {
    replace("machines", id, "usual");
  }, [id]);
  return null;
}

/** A clock that was set back: how old the last reading is cannot be known. */
function ClockBehind({ props, onAlone }: { props: CheckProps; onAlone: () => void }) {
  const action = <MainAction onPress={onAlone}>{say("hold.clock_go_on")}</MainAction>;
  return (
    <CheckFrame props={props} title={say("problem")} action={action}>
      <p role="alert">{say("hold.clock")}</p>
    </CheckFrame>
  );
}

/** Amounts that do not add up to the promised level are not shown. */
function Disagreed({ props }: { readonly props: CheckProps }) {
  return (
    <CheckFrame props={props} title={say("second.title")} action={<TryAgain />}>
      <section class="plain-page" role="alert">
        <StateMark state="stop" />
        <p>{say("second.stop")}</p>
      </section>
    </CheckFrame>
  );
}

interface ReadyProps {
  readonly props: CheckProps;
  readonly body: ReturnType<typeof holdBody>;
  readonly result: HoldCheckResult;
}

function Ready({ props, body, result }: ReadyProps) {
  const answered: Answered = { body, shown: result };
  const { saving, press } = useSavingOf(props.machine, props.walk, answered);
  const action = <SaveAction saving={saving} onPress={press} />;
  const title = result.holding.pours.length === 0 ? say("nothing.title") : say("hold.title");
  return (
    <CheckFrame props={props} title={title} action={action}>
      <HoldingView
        result={result}
        body={body}
        toUsual={address("machines", props.machine.machine, "usual", "change")}
      />
    </CheckFrame>
  );
}

export function HoldingScreen(props: CheckProps) {
  const { machine, walk } = props;
  const [now] = useState(() => isoWithOffset(new Date()));
  // Without what went before: where the last check cannot be read any more, the dip still can.
  const [isAlone, setAlone] = useState(false);
  const body = holdBody(machine, walk, now, !isAlone);
  const answer = useAnswer("hold_check", body);
  const path = answer?.kind === "error" ? answer.error.path : "";
  const isBefore = path.startsWith("body.last") || path.startsWith("body.read");
  useEffect(() => {
    if (isBefore) setAlone(true);
  }, [isBefore]);
  if (answer === null || answer.kind === "dropped" || isBefore) return <Waiting props={props} />;
  if (answer.kind === "down") return <Down props={props} />;
  if (answer.kind === "error") {
    const { code } = answer.error;
    if (path === "body.usual" && code === "missing") return <AskUsual id={machine.machine} />;
    if (path !== "body.now") return <Refused props={props} error={answer.error} />;
    return (
      <ClockBehind
        props={props}
        onAlone={() => {
          setAlone(true);
        }}
      />
    );
  }
  if (answer.result.assumed.includes("usual_of_correction"))
    return <AskUsual id={machine.machine} />;
  const { now_volume, pours, volume, poured } = answer.result.shown;
  if (!addsUp(now_volume, pours, volume, poured)) return <Disagreed props={props} />;
  const doubt = openDoubt(answer.result, walk.kept);
  return doubt === null ? (
    <Ready props={props} body={body} result={answer.result} />
  ) : (
    <Doubted props={props} doubt={doubt} />
  );
}

// After a dead phone or a closed app: where one was, when, and the one thing that the app cannot know.
import { MainAction, OtherAction } from "../../../elements/buttons";
import { Page } from "../../../elements/page";
import { changePouring, takeUp } from "../../../store/underway/pouring";
import { say, sayCount } from "../../../words/say";
import { timeOf } from "../../now";
import { back, go } from "../../route";
import { overtakenAt, overtakenWords } from "./overtaken";
import type { PourProps } from "./screen";
import { pouredCount, ticksAt, totalBuckets } from "./steps";

/** After this long a new dip is the safer beginning: common practice, no source. */
const LONG_MS = 4 * 3_600_000;

/** The two true answers about what the app did not see. */
function Going({ machine, pouring, steps, at }: PourProps & { readonly at: string }) {
  const id = machine.machine;
  const next = pouring.ticks.length;
  const bucket = steps[next]?.bucket ?? null;
  const oneMore = (): void => {
    const more = ticksAt(steps, next, { whole: true, at, told: true });
    changePouring(id, { ticks: [...pouring.ticks, ...more] });
  };
  return (
    <div class="two-ways">
      <OtherAction
        onPress={() => {
          takeUp(id);
        }}
      >
        {say("resume.no")}
      </OtherAction>
      {bucket === null ? null : (
        <OtherAction onPress={oneMore}>
          {say("resume.one_more", { n: String(bucket + 1) })}
        </OtherAction>
      )}
    </div>
  );
}

/** How far it got, and when. */
function Had({ pouring, steps, at }: PourProps & { readonly at: string }) {
  const last = pouring.ticks.at(-1);
  const done = last === undefined ? undefined : steps[last.step];
  const poured = pouredCount(steps, pouring.ticks);
  return (
    <>
      <p class="plain-lead" role="status">
        {sayCount("resume.had", poured, { total: String(totalBuckets(steps)) })}
      </p>
      <p>
        {say("resume.last", {
          time: timeOf(at),
          state: done === undefined ? "" : say(`pour.tick.${done.state}`),
        })}
      </p>
    </>
  );
}

/** By numbers that hold no longer nothing more is poured: what went in is told, and that ends it. */
export function OvertakenScreen(props: PourProps) {
  const { machine, pouring, steps } = props;
  const id = machine.machine;
  const newer = overtakenAt(id, steps.length);
  if (newer === undefined) return null;
  return (
    <Page
      title={say("pour.old_title")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", id);
      }}
      action={
        <MainAction
          rests
          onPress={() => {
            go("machines", id, "pour", "stop");
          }}
        >
          {say("pour.close")}
        </MainAction>
      }
    >
      <p class="plain-lead">{overtakenWords(newer)}</p>
      <Had {...props} at={pouring.ticks.at(-1)?.at ?? pouring.plan.measured_at} />
    </Page>
  );
}

export function ResumeScreen(props: PourProps) {
  const { machine, pouring } = props;
  const id = machine.machine;
  const last = pouring.ticks.at(-1);
  const at = last?.at ?? pouring.plan.measured_at;
  const isLong = Date.now() - Date.parse(at) > LONG_MS;
  const anew = (): void => {
    go("machines", id, "pour", "stop");
  };
  return (
    <Page
      title={say("resume.title")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", id);
      }}
      action={isLong ? <MainAction onPress={anew}>{say("resume.anew")}</MainAction> : undefined}
    >
      <Had {...props} at={at} />
      {isLong ? <p>{say("resume.long")}</p> : null}
      <h2>{say("resume.after")}</h2>
      <Going {...props} at={at} />
      {isLong ? null : <OtherAction onPress={anew}>{say("resume.anew")}</OtherAction>}
    </Page>
  );
}

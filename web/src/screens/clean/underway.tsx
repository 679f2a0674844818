// A clean-out that goes on here, or was stopped before its end: in the list and on the machine's own page.
import { cleaningOf } from "../../store/underway/cleaning";
import { say } from "../../words/say";
import { writeMoment } from "../../words/times";
import { stepOf } from "./steps";
import { stoppedAt } from "./stopped";

/** Something was ticked: from then on the sump is not what the log last said of it. */
export function isBeingCleaned(machine: string): boolean {
  return (cleaningOf(machine).value?.ticks.length ?? 0) > 0;
}

/** Null where no clean-out has to be ended. */
export function cleaningWords(machine: string): string | null {
  const cleaning = cleaningOf(machine).value;
  if (cleaning !== null && isBeingCleaned(machine))
    return say("clean.under_way", stepOf(cleaning.ticks.length));
  return stoppedAt(machine) === undefined ? null : say("clean.stopped");
}

/** When a clean-out was stopped, how far it had come, and what the next person must know. */
function StoppedFacts({ machine }: { readonly machine: string }) {
  const stopped = stoppedAt(machine);
  if (stopped === undefined) return null;
  const { steps = [], remarks = "" } = stopped.body;
  const last = steps.at(-1);
  const time = writeMoment(stopped.measured_at);
  return (
    <>
      <p>
        {last === undefined
          ? say("clean.stopped_bare", { time })
          : say("clean.stopped_at", { time, state: say(`clean.tick_${last.state}`) })}
      </p>
      {remarks === "" ? null : <p>{remarks}</p>}
    </>
  );
}

export function CleaningTask({ machine }: { readonly machine: string }) {
  const words = cleaningWords(machine);
  if (words === null) return null;
  return (
    <section class="task">
      <h2>{words}</h2>
      <StoppedFacts machine={machine} />
    </section>
  );
}

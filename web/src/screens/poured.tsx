// How a machine stands now: what was poured since its last reading makes that reading one of before.
import { StateMark } from "../elements/statemark";
import type { BucketRow } from "../core/messages";
import { lastMeasured, pouredAfter } from "../store/log/deeds";
import type { CheckEntry, RecheckEntry } from "../store/log/entry";
import { entryById, recentDeeds } from "../store/log/journal";
import { pouringOf } from "../store/underway/pouring";
import { stateWord } from "../words/codes";
import { say, sayCount } from "../words/say";
import { writeMoment } from "../words/times";
import { pourable } from "./check/pour/start";
import { isRunIn, pouredRows, pourSteps } from "./check/pour/steps";
import { drainedAt } from "./clean/stopped";
import { timeOf } from "./now";
import { stateOf } from "./state";

interface PouredNow {
  /** Null where it was no bucket, or where nobody knows how much it was. */
  readonly buckets: number | null;
  readonly at: string;
}

interface Ticked {
  readonly rows: readonly BucketRow[];
  readonly at: string;
}

/** Ticked at a pour that is not in the log yet. Ticks have no place there, so their clock decides. */
function tickedAfter(machine: string, measured_at: string): Ticked | null {
  const pouring = pouringOf(machine).value;
  const check = pouring === null ? undefined : entryById(pouring.check);
  const recipe = check?.kind === "check" ? pourable(check) : null;
  if (pouring === null || recipe === null) return null;
  if (recentDeeds.value.some(({ id }) => id === pouring.id)) return null;
  const steps = pourSteps(recipe);
  const wentIn = pouring.ticks
    .slice(pouring.logged)
    .filter(({ at }) => Date.parse(at) > Date.parse(measured_at))
    .filter((tick) => pouredRows(recipe, steps, [tick], 0).length > 0);
  const last = wentIn.at(-1);
  return last === undefined ? null : { rows: pouredRows(recipe, steps, wentIn, 0), at: last.at };
}

/** What went in since the last reading; null where that reading still holds, or where there is none. */
export function pouredSince(machine: string): PouredNow | null {
  const newest = lastMeasured(machine);
  if (newest === undefined) return null;
  const logged = pouredAfter(machine, newest.place);
  const ticked = tickedAfter(machine, newest.measured_at);
  const at = ticked?.at ?? logged?.last.measured_at;
  if (at === undefined) return null;
  const rows = [...(logged?.rows ?? []), ...(ticked?.rows ?? [])];
  const isCounted = logged?.hasUnknown !== true && !rows.some(isRunIn);
  return { buckets: isCounted ? rows.reduce((sum, { count }) => sum + count, 0) : null, at };
}

/** Whether something was poured after this check, so that its result is not the present one. */
export function isOfBefore(check: CheckEntry): boolean {
  const { machine, place, measured_at } = check;
  return pouredAfter(machine, place) !== null || tickedAfter(machine, measured_at) !== null;
}

function pouredWords({ buckets, at }: PouredNow): string {
  const time = timeOf(at);
  if (buckets === null) return say("machine.poured_uncounted", { time });
  return sayCount("machine.poured", buckets, { time });
}

/** The old result, as one of before; a dip alone had none. */
function beforeWords(newest: CheckEntry | RecheckEntry): string | null {
  const state = stateOf(newest);
  if (state === "none") return null;
  return say("machines.before", { state: stateWord(state), time: writeMoment(newest.measured_at) });
}

/** During a clean-out: what is in the sump nobody has read yet. */
function emptiedWords(machine: string): string | null {
  const drained = drainedAt(machine);
  if (drained === undefined) return null;
  const { at, charged_at } = drained;
  return charged_at === undefined
    ? say("machine.emptied", { time: timeOf(at) })
    : say("machine.charged", { time: timeOf(charged_at) });
}

/** In the list: never an old result as the present one. */
export function StateNow({ machine }: { readonly machine: string }) {
  const newest = lastMeasured(machine);
  const poured = pouredSince(machine);
  const emptied = emptiedWords(machine);
  if (emptied !== null)
    return (
      <span class="machine-state">
        <StateMark state="none" />
        <span class="note">{emptied}</span>
      </span>
    );
  if (newest === undefined || poured === null)
    return (
      <span class="machine-state">
        <StateMark state={stateOf(newest)} />
        <span class="note">
          {newest === undefined ? say("machines.never") : writeMoment(newest.measured_at)}
        </span>
      </span>
    );
  const before = beforeWords(newest);
  return (
    <>
      <span class="machine-state">
        <StateMark state="poured" />
        <span class="note">{pouredWords(poured)}</span>
      </span>
      {before === null ? null : <span class="note">{before}</span>}
    </>
  );
}

/** On the machine's own page, above what was found before. */
export function Poured({ machine }: { readonly machine: string }) {
  const emptied = emptiedWords(machine);
  if (emptied !== null)
    return (
      <section class="last-check">
        <StateMark state="none" />
        <p>{emptied}</p>
      </section>
    );
  const poured = pouredSince(machine);
  if (poured === null) return null;
  return (
    <section class="last-check">
      <StateMark state="poured" />
      <p>{pouredWords(poured)}</p>
    </section>
  );
}

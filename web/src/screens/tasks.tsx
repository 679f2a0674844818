// What is open at a machine: a pour that is not finished, a second reading that is due.
import { PlaceLink } from "../elements/buttons";
import { StateMark } from "../elements/statemark";
import { pouringOf } from "../store/underway/pouring";
import { lastMeasured, refusedLook } from "../store/log/deeds";
import type { CheckEntry } from "../store/log/entry";
import { entryById } from "../store/log/journal";
import { heldOf, isResting } from "../store/log/machines";
import { readAtOf } from "../store/log/dueparts";
import { dueRecheck, unmixedAt, type DueReading } from "../store/log/mixing";
import { isStarted, walkOf } from "../store/underway/walk";
import { write } from "../words/numbers";
import { say, sayCount } from "../words/say";
import { isoWithOffset, writeMoment } from "../words/times";
import { CleaningTask, cleaningWords, isBeingCleaned } from "./clean/underway";
import { firstPlace } from "./check/place";
import { DeadWays } from "./check/look/dead";
import { partialSummary } from "./check/without/partial";
import { isBegun, pourable } from "./check/pour/start";
import { overtakenAt, overtakenCheck, overtakenWords } from "./check/pour/overtaken";
import { pouredCount, pourSteps, totalBuckets } from "./check/pour/steps";
import { now_ms, timeOf } from "./now";
import { Poured, pouredSince } from "./poured";
import { address } from "./route";
import { stateOf } from "./state";

/** The second reading that is due; it rests with the machine. */
function dueNow(machine: string): DueReading | undefined {
  return isResting(machine) ? undefined : dueRecheck(machine);
}

export function dueWords({ due_at }: DueReading): string {
  const key = Date.parse(due_at) > now_ms.value ? "recheck.due" : "recheck.due_since";
  return say(key, { time: timeOf(due_at) });
}

const MINUTE_MS = 60_000;

/** A reading before its time is taken too, and it is said how early it is; null from then on. */
function earlyWords({ pour }: DueReading): string | null {
  const mixing = unmixedAt(pour.machine, isoWithOffset(new Date(now_ms.value)));
  if (mixing === null) return null;
  const minutes = Math.floor((now_ms.value - Date.parse(mixing.poured_at)) / MINUTE_MS);
  if (minutes < 0) return say("recheck.clock_back");
  return minutes < 1 ? say("recheck.at_once") : sayCount("recheck.early", minutes);
}

interface UnderWay {
  /** "2 of 5 buckets poured". */
  readonly words: string;
  readonly isAllIn: boolean;
  /** Why nothing more of it is poured; null where the rest goes on. */
  readonly old: string | null;
  readonly last_at: string | undefined;
}

/** Null where no pour is open. */
function underWay(machine: string): UnderWay | null {
  const pouring = pouringOf(machine).value;
  const check = pouring === null ? undefined : entryById(pouring.check);
  const recipe = check?.kind === "check" ? pourable(check) : null;
  if (pouring === null || recipe === null) return null;
  const steps = pourSteps(recipe);
  const isAllIn = pouring.ticks.length >= steps.length;
  const newer = overtakenAt(machine, steps.length);
  return {
    words: say(isAllIn ? "pour.not_saved" : "pour.under_way", {
      poured: String(pouredCount(steps, pouring.ticks)),
      total: String(totalBuckets(steps)),
    }),
    isAllIn,
    old: newer === undefined ? null : overtakenWords(newer),
    last_at: pouring.ticks.at(-1)?.at,
  };
}

export function pouringWords(machine: string): string | null {
  return underWay(machine)?.words ?? null;
}

/** What stands first: the lower, the more it presses. */
export function pressing(machine: string): number {
  if (heldOf(machine) !== undefined) return 0;
  if (isBeingCleaned(machine) || pouringWords(machine) !== null) return 1;
  if (refusedLook(machine) !== undefined) return 1;
  return dueNow(machine) === undefined ? 3 : 2;
}

/** A check that was begun goes on, whatever is due later. */
export function checkWord(machine: string): string {
  return say(isStarted(walkOf(machine).value) ? "machine.go_on" : "machine.start");
}

/**
 * Whether the second reading leads. Before its time it does too, since nothing else tells what the buckets
 * did; only what was begun or refused meanwhile goes before it.
 */
function readsNext(machine: string): boolean {
  const due = dueNow(machine);
  if (due === undefined) return false;
  const hasOther = isStarted(walkOf(machine).value) || refusedLook(machine) !== undefined;
  return !hasOther || earlyWords(due) === null;
}

/** Whether something was begun here or is due now, so that it goes before a check elsewhere. */
export function isWanted(machine: string): boolean {
  if (isBeingCleaned(machine) || pouringWords(machine) !== null) return true;
  if (isStarted(walkOf(machine).value)) return true;
  const due = dueNow(machine);
  return due !== undefined && earlyWords(due) === null;
}

/** What the main action of a machine does: what was begun first, then what is due, then a check. */
export interface NextDeed {
  readonly kind: "clean_out" | "pour" | "recheck" | "check";
  readonly word: string;
  readonly place: string;
}

export function nextAt(machine: string): NextDeed {
  // Nothing is poured or read in a sump that is being emptied.
  if (cleaningWords(machine) !== null)
    return { kind: "clean_out", word: say("clean.go_on"), place: "clean-out" };
  const open = underWay(machine);
  if (open !== null) {
    const word = open.old === null ? "pour.go_on" : "pour.close";
    return { kind: "pour", word: say(open.isAllIn ? "pour.to_save" : word), place: "pour" };
  }
  if (readsNext(machine)) return { kind: "recheck", word: say("recheck.enter"), place: "recheck" };
  return { kind: "check", word: checkWord(machine), place: firstPlace(machine) };
}

/** In the list, as lines below the name. */
export function TaskLines({ machine }: { readonly machine: string }) {
  const refused = refusedLook(machine);
  const pouring = pouringWords(machine);
  const cleaning = cleaningWords(machine);
  const due = dueNow(machine);
  return (
    <>
      {cleaning === null ? null : <span class="machine-due">{cleaning}</span>}
      {refused === undefined ? null : (
        <span class="machine-due">{say("look.decision.do_not_feed")}</span>
      )}
      {pouring === null ? null : <span class="machine-due">{pouring}</span>}
      {due === undefined ? null : <span class="machine-due">{dueWords(due)}</span>}
    </>
  );
}

/** A second reading is newer than the check below it, so its state stands above that one. */
function Reread({ machine }: { readonly machine: string }) {
  const newest = lastMeasured(machine);
  if (newest?.kind !== "recheck") return null;
  const strength = newest.shown.assessment.strength?.shown.strength;
  const unmixed = unmixedAt(machine, readAtOf(newest), newest.place);
  const key = pouredSince(machine) === null ? "recheck.saved" : "recheck.saved_before";
  return (
    <section>
      <h2>{say(key, { time: writeMoment(newest.measured_at) })}</h2>
      <StateMark state={stateOf(newest)} />
      {strength === undefined ? null : (
        <p>{say("machine.strength", { strength: write(strength) })}</p>
      )}
      {unmixed === null ? null : <p>{say("compact.unmixed", { due: timeOf(unmixed.due_at) })}</p>}
    </section>
  );
}

/** Seen at the last look: until somebody checks again, nothing is added here. */
function Refused({ machine }: { readonly machine: string }) {
  const refused = refusedLook(machine);
  if (refused === undefined) return null;
  return (
    <section class="task">
      <h2>{say("look.decision.do_not_feed")}</h2>
      <p>{writeMoment(refused.measured_at)}</p>
      <p>{partialSummary(refused)}</p>
      <DeadWays machine={machine} />
    </section>
  );
}

function OpenPour({ machine }: { readonly machine: string }) {
  const open = underWay(machine);
  if (open === null) return null;
  const { words, isAllIn, old, last_at } = open;
  const key = isAllIn ? "pour.not_saved_text" : "pour.under_way_text";
  return (
    <section class="task">
      <h2>{words}</h2>
      {last_at === undefined ? null : <p>{say(key, { time: timeOf(last_at) })}</p>}
      {old === null ? null : <p>{old}</p>}
      {nextAt(machine).kind === "pour" ? null : (
        <PlaceLink to={address("machines", machine, "pour")}>
          {say(isAllIn ? "pour.to_save" : old === null ? "pour.go_on" : "pour.close")}
        </PlaceLink>
      )}
    </section>
  );
}

/** On the machine's own page, first of all. */
export function Tasks({ machine, check }: { machine: string; check: CheckEntry | undefined }) {
  const due = dueNow(machine);
  const early = due === undefined ? null : earlyWords(due);
  const isWaiting =
    check !== undefined &&
    pouringOf(machine).value === null &&
    pourable(check) !== null &&
    !isBegun(check) &&
    overtakenCheck(check) === undefined;
  return (
    <>
      <CleaningTask machine={machine} />
      <Refused machine={machine} />
      <OpenPour machine={machine} />
      <Poured machine={machine} />
      {due === undefined ? null : (
        <section class="task">
          <h2>{dueWords(due)}</h2>
          {early === null ? null : <p>{early}</p>}
          <div class="places">
            {nextAt(machine).kind === "recheck" ? null : (
              <PlaceLink to={address("machines", machine, "recheck")}>
                {say("recheck.enter")}
              </PlaceLink>
            )}
            <PlaceLink to={address("machines", machine, "recheck", "skip")}>
              {say("recheck.skip")}
            </PlaceLink>
          </div>
        </section>
      )}
      <Reread machine={machine} />
      {isWaiting ? (
        <PlaceLink to={address("machines", machine, "saved", check.id)}>
          {say("pour.start_of", { time: writeMoment(check.measured_at) })}
        </PlaceLink>
      ) : null}
    </>
  );
}

// What the log says of each machine now: its set-up, its last checks, how it is used.
import { computed } from "@preact/signals";
import type { AnyEntry, CheckEntry, Entry, MachineEntry, StateEntry } from "./entry";
import { coldOf, recent, recentDoubtful, wantWhole } from "./journal";
import { latestOf, mayBeLatest } from "./latest";
import { isMeasured, PINNED } from "./pinned";
import { isAtRest, isHeld } from "../written/told";

/** The latest entry of a kind about each machine. */
function latestByMachine<T extends Entry>(ofKind: (entry: Entry) => entry is T): readonly T[] {
  const told = new Map<string, T[]>();
  for (const entry of recent.value.filter(ofKind)) {
    const known = told.get(entry.machine);
    if (known === undefined) told.set(entry.machine, [entry]);
    else known.push(entry);
  }
  return [...told.values()].flatMap((entries) => latestOf(entries) ?? []);
}

/** A machine is its latest set-up. */
export const machines = computed<readonly MachineEntry[]>(() =>
  latestByMachine((entry) => entry.kind === "machine"),
);

/** Of the charge that is in now, as pycore has it. */
const lastChecks = computed<ReadonlyMap<string, CheckEntry>>(() => {
  const latest = new Map<string, CheckEntry>();
  for (const entry of recent.value) {
    if (entry.kind === "check" && isMeasured(entry)) latest.set(entry.machine, entry);
    if (entry.kind === "clean_out" && entry.body.finished) latest.delete(entry.machine);
  }
  return latest;
});

/** How each machine is used, by its latest word about it. */
const states = computed<ReadonlyMap<string, StateEntry>>(() => {
  const latest = latestByMachine((entry) => entry.kind === "machine_state");
  return new Map(latest.map((entry) => [entry.machine, entry]));
});

/** Undefined where nobody has said anything, or has said that it is in ordinary use. */
export function statedOf(machine: string): StateEntry | undefined {
  const stated = heldOf(machine) ?? states.value.get(machine);
  return stated?.body.state === "in_use" ? undefined : stated;
}

export function isResting(machine: string): boolean {
  const stated = statedOf(machine);
  return stated !== undefined && isAtRest(stated.body);
}

/**
 * The tag or the stop that stands at a machine: of the words that may be the latest one is enough, those
 * among them about which people have not decided yet.
 */
export function heldOf(machine: string): StateEntry | undefined {
  const isState = (one: AnyEntry): one is StateEntry =>
    one.kind === "machine_state" && one.machine === machine;
  return mayBeLatest(recent.value.filter(isState), recentDoubtful.value.filter(isState))
    .filter(({ body }) => isHeld(body))
    .at(-1);
}

export function machineById(id: string): MachineEntry | undefined {
  return machines.value.find((entry) => entry.machine === id);
}

export function lastCheck(machine: string): CheckEntry | undefined {
  return lastChecks.value.get(machine);
}

/** The last check of a machine that has what is looked for, such as a dip. */
export function lastCheckWith<T extends CheckEntry>(
  machine: string,
  fits: (check: CheckEntry) => check is T,
): T | undefined {
  const found = recent.value
    .filter((entry) => entry.kind === "check")
    .filter((check) => check.machine === machine)
    .filter(fits)
    .at(-1);
  if (found === undefined && !PINNED.includes(fits) && coldOf(machine).checks > 0) wantWhole();
  return found;
}

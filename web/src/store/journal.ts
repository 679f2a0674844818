// What the screens know of the log: read once, then changed only by entries that were stored.
import { computed, signal, type ReadonlySignal } from "@preact/signals";
import { saveEntry, type Saved } from "./entries";
import { troubleOf, type StoreTrouble } from "./trouble";
import {
  isLookOnly,
  isOfDeed,
  type CheckEntry,
  type AnyContent,
  type DeedEntry,
  type Entry,
  type MachineEntry,
  type ToldEntry,
} from "./entry";
import { fillExample } from "./example";
import { askToKeep } from "./keeping";
import { closeIfElsewhere, closeIfShort, lackingNow, type Lack } from "./lacking";
import { readLedger, type Ledger } from "./ledger";
import { lineOf, sortLines, type Line } from "./lines";
import { isAtRest, isHeld } from "./told";
import { isExample, STORE } from "./which";
import { dropLacking, readWitness, type Head } from "./witness";

export type Stated = Extract<ToldEntry, { kind: "machine_state" }>;

export type Load =
  | { readonly kind: "reading" }
  | { readonly kind: "ready" }
  | { readonly kind: "failed"; readonly trouble: StoreTrouble };

const storedLines = signal<readonly Line[]>([]);
const knownHeads = signal<readonly Head[]>([]);
const missing = signal<readonly Lack[]>([]);
const loadState = signal<Load>({ kind: "reading" });
export const load: ReadonlySignal<Load> = loadState;
/** Every line that is stored, whether it can be used or not. */
export const lines: ReadonlySignal<readonly Line[]> = storedLines;
/** Ends of logs that files told of. */
export const heads: ReadonlySignal<readonly Head[]> = knownHeads;
/** What was stored on this phone and is not there any more. */
export const lacking: ReadonlySignal<readonly Lack[]> = missing;

const sorted = computed(() => sortLines(storedLines.value));
export const entries = computed<readonly Entry[]>(() =>
  sorted.value.entries.filter((entry): entry is Entry => !isOfDeed(entry)),
);
/** What was poured and read again, in the same order. */
export const deeds = computed<readonly DeedEntry[]>(() => sorted.value.entries.filter(isOfDeed));
/** Lines that this build cannot show. They stay stored and are counted. */
export const unreadable = computed(() => sorted.value.unreadable);
export const apart = computed(() => sorted.value.apart);
export const quarantined = computed(() => sorted.value.quarantined);

/** A machine is its latest set-up; the order of entries decides, never the clock of a log alone. */
export const machines = computed<readonly MachineEntry[]>(() => {
  const latest = new Map<string, MachineEntry>();
  for (const entry of entries.value) if (entry.kind === "machine") latest.set(entry.machine, entry);
  return [...latest.values()];
});

const lastChecks = computed<ReadonlyMap<string, CheckEntry>>(() => {
  const latest = new Map<string, CheckEntry>();
  for (const entry of entries.value)
    if (entry.kind === "check" && !isLookOnly(entry)) latest.set(entry.machine, entry);
  return latest;
});

/** How each machine is used, by its latest word about it. */
const states = computed<ReadonlyMap<string, Stated>>(() => {
  const latest = new Map<string, Stated>();
  for (const entry of entries.value)
    if (entry.kind === "machine_state") latest.set(entry.machine, entry);
  return latest;
});

/** Undefined where nobody has said anything, or has said that it is in ordinary use. */
export function statedOf(machine: string): Stated | undefined {
  const stated = states.value.get(machine);
  return stated?.body.state === "in_use" ? undefined : stated;
}

export function isResting(machine: string): boolean {
  const stated = statedOf(machine);
  return stated !== undefined && isAtRest(stated.body);
}

/** The tag or the stop that stands at a machine. */
export function heldOf(machine: string): Stated | undefined {
  const stated = statedOf(machine);
  return stated !== undefined && isHeld(stated.body) ? stated : undefined;
}

/** A code that was printed once stays: were two given in two windows, both still lead to the machine. */
const codes = computed<readonly (readonly [code: string, machine: string])[]>(() =>
  entries.value.flatMap((entry) =>
    entry.kind === "machine" && entry.code !== undefined ? [[entry.code, entry.machine]] : [],
  ),
);

export function codeOf(machine: string): string | undefined {
  return codes.value.find(([, owner]) => owner === machine)?.[0];
}

export function machineByCode(code: string): MachineEntry | undefined {
  const owner = codes.value.find(([known]) => known === code)?.[1];
  return owner === undefined ? undefined : machineById(owner);
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
  return entries.value
    .filter((entry) => entry.kind === "check")
    .filter((check) => check.machine === machine)
    .filter(fits)
    .at(-1);
}

export function entryById(id: string): Entry | undefined {
  return entries.value.find((entry) => entry.id === id);
}

async function readLines(): Promise<readonly [Ledger, readonly Line[]]> {
  const ledger = await readLedger();
  return [ledger, await Promise.all(ledger.lines.map(lineOf))];
}

async function fetchAll(): Promise<void> {
  await fillExample();
  const witness = readWitness();
  let [ledger, found] = await readLines();
  const isShort = await closeIfShort(witness, ledger, found);
  if (isShort || (await closeIfElsewhere(ledger, found))) [ledger, found] = await readLines();
  storedLines.value = found;
  knownHeads.value = ledger.heads;
  missing.value = lackingNow(found);
  loadState.value = { kind: "ready" };
}

export async function readJournal(): Promise<void> {
  loadState.value = { kind: "reading" };
  await readAgain();
}

/** A person goes on without what is missing. */
export function goOnWithout(): void {
  dropLacking();
  missing.value = [];
}

/** Another window of this app may have written: without this an old set-up would stand here as the present one. */
const news = "BroadcastChannel" in globalThis ? new BroadcastChannel(`${STORE}.log`) : null;

async function readAgain(): Promise<void> {
  try {
    await fetchAll();
  } catch (error) {
    loadState.value = { kind: "failed", trouble: troubleOf(error) };
  }
}

/** After lines were added by another way than `save`. */
export async function readNews(): Promise<void> {
  await readAgain();
  news?.postMessage("written");
}

export function followOtherWindows(): void {
  news?.addEventListener("message", () => {
    if (loadState.value.kind === "ready") void readAgain();
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible" && loadState.value.kind === "ready")
      void readAgain();
  });
}

/** Memory changes only after the store has answered; a row that was there already is not added twice. */
export async function save(content: AnyContent): Promise<Saved> {
  const outcome = await saveEntry(content);
  if (outcome.kind === "saved") {
    const line = await lineOf({ text: outcome.row.text, mine: true, whole: true });
    const others = storedLines.value.filter(({ hash }) => hash !== line.hash);
    storedLines.value = [...others, line];
    missing.value = lackingNow(storedLines.value);
    news?.postMessage("written");
    if (!isExample) void askToKeep();
  }
  return outcome;
}

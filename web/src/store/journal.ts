// What the screens know of the log: read once, then changed only by entries that were stored.
import { computed, signal, type ReadonlySignal } from "@preact/signals";
import { saveEntry, readRows, type Saved } from "./entries";
import { troubleOf, type StoreTrouble } from "./database";
import {
  entryOf,
  type CheckEntry,
  type Content,
  type Entry,
  type MachineEntry,
  type Row,
} from "./entry";
import { askToKeep } from "./keeping";

export type Load =
  | { readonly kind: "reading" }
  | { readonly kind: "ready" }
  | { readonly kind: "failed"; readonly trouble: StoreTrouble };

const rows = signal<readonly Row[]>([]);
const loadState = signal<Load>({ kind: "reading" });
export const load: ReadonlySignal<Load> = loadState;

export const entries = computed<readonly Entry[]>(() =>
  rows.value.map(entryOf).filter((entry): entry is Entry => entry !== null),
);

/** Lines that this build cannot read. They stay stored and are counted. */
export const unreadable = computed(() => rows.value.length - entries.value.length);

/** A machine is its latest set-up; within one log the number decides, never the clock. */
export const machines = computed<readonly MachineEntry[]>(() => {
  const latest = new Map<string, MachineEntry>();
  for (const entry of entries.value) if (entry.kind === "machine") latest.set(entry.machine, entry);
  return [...latest.values()];
});

const lastChecks = computed<ReadonlyMap<string, CheckEntry>>(() => {
  const latest = new Map<string, CheckEntry>();
  for (const entry of entries.value) if (entry.kind === "check") latest.set(entry.machine, entry);
  return latest;
});

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

export async function readJournal(): Promise<void> {
  loadState.value = { kind: "reading" };
  try {
    rows.value = await readRows();
    loadState.value = { kind: "ready" };
  } catch (error) {
    loadState.value = { kind: "failed", trouble: troubleOf(error) };
  }
}

/** Another window of this app may have written: without this an old set-up would stand here as the present one. */
const news = "BroadcastChannel" in globalThis ? new BroadcastChannel("pailwright.log") : null;

async function readAgain(): Promise<void> {
  if (loadState.value.kind !== "ready") return;
  try {
    rows.value = await readRows();
  } catch (error) {
    loadState.value = { kind: "failed", trouble: troubleOf(error) };
  }
}

export function followOtherWindows(): void {
  news?.addEventListener("message", () => void readAgain());
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") void readAgain();
  });
}

/** Memory changes only after the store has answered; a row that was there already is not added twice. */
export async function save(content: Content): Promise<Saved> {
  const outcome = await saveEntry(content);
  if (outcome.kind === "saved") {
    const others = rows.value.filter((row) => row.seq !== outcome.row.seq);
    rows.value = [...others, outcome.row].sort((a, b) => a.seq - b.seq);
    news?.postMessage("written");
    void askToKeep();
  }
  return outcome;
}

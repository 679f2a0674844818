// What the screens know of the log: read once, then changed only by entries that were stored.
import { computed, effect, signal, type ReadonlySignal } from "@preact/signals";
import { addedTo, checkpointOf, keepCheckpoint, type Checkpoint, type Cold } from "./checkpoint";
import { whenLost } from "./database";
import { saveEntry, type Saved } from "./entries";
import { troubleOf, type StoreTrouble } from "./trouble";
import {
  isAbout,
  isOfDeed,
  isTold,
  type AnyEntry,
  type DeedEntry,
  type Entry,
  type Storable,
} from "./entry";
import { fillExample } from "./example";
import { unexported, type Unexported } from "./exported";
import type { Fork } from "./forks";
import { isSound, readHeld, withLine, type Held, type Need } from "./held";
import { askToKeep } from "./keeping";
import { lackingNow, type Lack } from "./lacking";
import { headsOf, ownLine } from "./ledger";
import { lineOf, sortLines, type Line, type Placed } from "./lines";
import { breathe } from "./pieces";
import { recallDrafts } from "../underway/drafts";
import { signature } from "../phone/name";
import { isExample, STORE } from "../phone/which";
import { dropLacking, noteIfGone, type Head } from "./witness";

export type Load =
  | { readonly kind: "reading" }
  | { readonly kind: "ready" }
  | { readonly kind: "failed"; readonly trouble: StoreTrouble };

const held = signal<Held | null>(null);
const missing = signal<readonly Lack[]>([]);
const state = signal<Load>({ kind: "reading" });
/** Whether the first pages can be drawn. Of the log they need the latest of each machine. */
export const opened: ReadonlySignal<Load> = state;
/** What was stored on this phone and is not there any more. */
export const lacking: ReadonlySignal<readonly Lack[]> = missing;

let need: Need = "part";

/** Reads every line, for a page that looks further back than the part that opens the app. */
export function wantWhole(): void {
  if (need === "whole") return;
  need = "whole";
  // Not at once: a page may ask while it is drawn.
  queueMicrotask(() => {
    if (opened.peek().kind === "ready") void readAgain();
  });
}

const wholeLines = computed<readonly Line[] | null>(() =>
  held.value?.base === null ? held.value.lines : null,
);

function whole(): readonly Line[] | null {
  if (wholeLines.value === null) wantWhole();
  return wholeLines.value;
}

/** Whether every line is here. To look at it, or at `lines`, `entries` or `deeds`, asks for them. */
export const load = computed<Load>(() =>
  state.value.kind === "ready" && whole() === null ? { kind: "reading" } : state.value,
);
/** Settles when every line is here, or cannot be read. */
export function whenRead(): Promise<void> {
  return new Promise((done) => {
    const stop = effect(() => {
      if (load.value.kind === "reading") return;
      queueMicrotask(() => {
        stop();
      });
      done();
    });
  });
}

/** Every line that is stored, whether it can be used or not; none until all are here. */
export const lines = computed<readonly Line[]>(() => whole() ?? []);
/** Ends of logs that files told of. */
export const heads = computed<readonly Head[]>(() =>
  held.value === null ? [] : headsOf(held.value.reach),
);

const sorted = computed(() => sortLines(held.value?.lines ?? []));
const placed = computed(() => sorted.value.placed.map(({ entry }) => entry));
/** The same in the lines they stand in, for what pycore is asked about now. */
export const recentPlaced = computed<readonly Placed[]>(() => sorted.value.placed);
/** Lines that correct or take back some of them. */
export const recentBehind = computed<readonly Line[]>(() => sorted.value.behind);
/** The latest entries of all and of each machine: what the first pages show. */
export const recent = computed<readonly Entry[]>(() =>
  placed.value.filter((entry): entry is Entry => !isOfDeed(entry)),
);
/** With those that were taken back or contradict themselves: what the log's page shows. */
export const recentTold = computed<readonly Entry[]>(() =>
  sorted.value.listed.map(({ entry }) => entry).filter((entry): entry is Entry => !isOfDeed(entry)),
);
/** The same of the deeds: for the pages of the log, never for a sum. */
export const recentDeedsTold = computed<readonly DeedEntry[]>(() =>
  sorted.value.listed.map(({ entry }) => entry).filter(isOfDeed),
);
export const recentDeeds = computed<readonly DeedEntry[]>(() => placed.value.filter(isOfDeed));
export const entries = computed<readonly Entry[]>(() => (whole() === null ? [] : recent.value));
/** What was poured and read again, in the same order. */
export const deeds = computed<readonly DeedEntry[]>(() =>
  whole() === null ? [] : recentDeeds.value,
);

/** Places that several lines claim, decided or not; none until all lines are here. */
export const forks = computed<readonly Fork[]>(() => (whole() === null ? [] : sorted.value.forks));

function asideOf(name: keyof Checkpoint["aside"]): ReadonlySignal<number> {
  return computed(() => sorted.value[name] + (held.value?.base?.aside[name] ?? 0));
}

/** Lines that this build cannot show. They stay stored and are counted. */
export const unreadable = asideOf("unreadable");
/** What the office has taken out. */
export const removed = asideOf("removed");
export const apart = asideOf("apart");
export const quarantined = asideOf("quarantined");

/** How many entries of a machine, or of all, are not among the recent ones. */
export function coldOf(machine: string | undefined): Cold {
  const cold = Object.entries(held.value?.base?.cold ?? {})
    .filter(([name]) => machine === undefined || name === machine)
    .map(([, counted]) => counted);
  return {
    entries: cold.reduce((sum, counted) => sum + counted.entries, 0),
    checks: cold.reduce((sum, counted) => sum + counted.checks, 0),
  };
}

/** What is on this phone alone; null while it has to be counted. */
export const backlog = computed<Unexported | null>(() => {
  if (held.value === null) return null;
  const { lines: all, base } = held.value;
  const open = unexported(addedTo(all), base?.open ?? null);
  if (open === null) wantWhole();
  return open;
});

/** Words about which people have not decided yet. */
export const recentDoubtful = computed<readonly AnyEntry[]>(() => sorted.value.doubtful);

/** An entry that is not among the recent ones is asked for; until then `load` says that it is read. */
export function entryById(id: string): Entry | undefined {
  const found = recentTold.value.find((entry) => entry.id === id);
  if (found === undefined) whole();
  return found;
}

export function deedById(id: string): DeedEntry | undefined {
  const found = recentDeedsTold.value.find((deed) => deed.id === id);
  if (found === undefined) whole();
  return found;
}

/** So many lines added since the last checkpoint are read at a start; more would be felt. */
const MOST_ADDED = 50;
let counted = -Infinity;

/** Not in the turn in which the pages are drawn: choosing among years of entries takes its own time. */
async function keepWhenDrawn(): Promise<void> {
  await breathe();
  const now = held.value;
  if (now === null || !isSound(now)) return;
  await keepCheckpoint(checkpointOf(now.reach, now.lines, sorted.value, now.base));
}

function keepIfDue(now: Held): void {
  if (now.lines.length - counted <= MOST_ADDED || !isSound(now)) return;
  counted = now.lines.length;
  void keepWhenDrawn();
}

function take(now: Held): void {
  const before = held.value;
  if (before === null || before.base !== now.base)
    counted = now.base === null ? -Infinity : now.base.hot.length;
  held.value = now;
  missing.value = now.base === null ? lackingNow(now.lines) : [];
  state.value = { kind: "ready" };
  keepIfDue(now);
}

async function fetchAll(): Promise<void> {
  await fillExample();
  const wanted = need;
  // Before the first page is drawn: it tells how many buckets are poured.
  const [read] = await Promise.all([readHeld(held.value, wanted), recallDrafts()]);
  take(read);
  if (wanted !== need) await fetchAll();
}

export async function readJournal(): Promise<void> {
  state.value = { kind: "reading" };
  // A database that does not open must not keep every page blank: this one answers within a second.
  void recallDrafts();
  await readAgain();
}

/** A person goes on without what is missing. */
export function goOnWithout(): void {
  dropLacking();
  missing.value = [];
}

/** Another window of this app may have written: without this an old set-up would stand here as the present one. */
const news = "BroadcastChannel" in globalThis ? new BroadcastChannel(`${STORE}.log`) : null;

async function readAgain(anew = false): Promise<void> {
  if (anew) need = "whole";
  try {
    if (anew) take(await readHeld(null, need));
    await fetchAll();
  } catch (error) {
    state.value = { kind: "failed", trouble: troubleOf(error) };
    await recallDrafts();
  }
}

/** After lines were added by another way than `save`: a tombstone may have taken the place of one. */
export async function readNews(): Promise<void> {
  await readAgain(true);
  news?.postMessage("all");
}

/** The connection was ended, perhaps with the data: looked at now and not at the next start. */
function lookAfterLoss(): void {
  if (held.value === null) return;
  const { log, count, head } = held.value.reach;
  noteIfGone({ log, count, head });
  void readAgain();
}

export function followOtherWindows(): void {
  whenLost(lookAfterLoss);
  news?.addEventListener("message", ({ data }) => {
    if (state.value.kind === "ready") void readAgain(data === "all");
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible" && state.value.kind === "ready") void readAgain();
  });
}

/** With the name from the settings. Words about the log are said on a form that asks for a name itself. */
function signed(content: Storable): Storable {
  const by = signature();
  const isAsked = isAbout(content) || isTold(content);
  return by === "" || isAsked ? content : { ...content, by };
}

/** Memory changes only after the store has answered; a row that was there already is not added twice. */
export async function save(content: Storable): Promise<Saved> {
  const outcome = await saveEntry(signed(content));
  if (outcome.kind === "saved") {
    const line = await lineOf(ownLine(outcome.row));
    const now = held.value && withLine(held.value, line);
    if (now === null) await readAgain();
    else take(now);
    news?.postMessage("written");
    if (!isExample) void askToKeep();
  }
  return outcome;
}

// The sump that is dealt for practice and what was worked out for it. A draft and never an entry: what is
// practised has no part in the log. It outlasts a reload and goes with the next deal.
import { signal, type ReadonlySignal } from "@preact/signals";
import type { PracticeLevel } from "../../core/messages";
import { followDrafts, readDraft, writeDraft } from "./drafts";

export const LEVELS = ["alike", "rich", "full", "band"] as const satisfies readonly PracticeLevel[];
export const NUMBER_STEPS = ["volume", "strength", "room", "take_out", "top_up"] as const;
export type NumberStep = (typeof NUMBER_STEPS)[number];
export type PracticeStep = NumberStep | "pours";
/** Where somebody stood last, to go on from there. */
export type Place = PracticeStep | "result";
export type Mode = "each" | "end";

export interface OwnRow {
  readonly count: string;
  readonly water: string;
  readonly concentrate: string;
}

export interface Practice {
  readonly level: PracticeLevel;
  readonly number: string;
  readonly mode: Mode;
  readonly texts: Readonly<Partial<Record<NumberStep, string>>>;
  readonly rows: readonly OwnRow[];
  /** Steps whose solution was asked for; the right number is worked on with. */
  readonly shown: readonly PracticeStep[];
  readonly at: Place;
}

export const EMPTY_ROW: OwnRow = { count: "", water: "", concentrate: "" };
const PLACES = [...NUMBER_STEPS, "pours", "result"] as const satisfies readonly Place[];
const DRAFT = "practice";

function isRow(value: unknown): value is OwnRow {
  if (value === null || typeof value !== "object") return false;
  const { count, water, concentrate } = value as Partial<OwnRow>;
  return [count, water, concentrate].every((text) => typeof text === "string");
}

function isPractice(value: unknown): value is Practice {
  if (value === null || typeof value !== "object") return false;
  const { level, number, mode, texts, rows, shown, at } = value as Partial<Practice>;
  return (
    LEVELS.some((one) => one === level) &&
    typeof number === "string" &&
    (mode === "each" || mode === "end") &&
    typeof texts === "object" &&
    Object.values(texts).every((text) => typeof text === "string") &&
    Array.isArray(rows) &&
    rows.every(isRow) &&
    Array.isArray(shown) &&
    PLACES.some((one) => one === at)
  );
}

function stored(): Practice | null {
  const draft = readDraft(DRAFT);
  return isPractice(draft) ? draft : null;
}

const current = signal<Practice | null>(stored());
export const practice: ReadonlySignal<Practice | null> = current;

export function followPractice(): void {
  followDrafts((name) => {
    if (name === DRAFT) current.value = stored();
  });
}

function keep(next: Practice): void {
  current.value = next;
  writeDraft(DRAFT, next);
}

export function beginPractice(level: PracticeLevel, number: string, mode: Mode): void {
  keep({ level, number, mode, texts: {}, rows: [EMPTY_ROW], shown: [], at: "volume" });
}

export function changePractice(change: Partial<Omit<Practice, "level" | "number" | "mode">>): void {
  if (current.value !== null) keep({ ...current.value, ...change });
}

/** Highest number of a sump, as in shared/quantities.json. */
const MOST_NUMBER = 9999;

/** Any of the numbers, each as likely. */
export function drawNumber(): string {
  const words = new Uint32Array(1);
  const whole = Math.floor(2 ** 32 / MOST_NUMBER) * MOST_NUMBER;
  let word: number;
  do {
    word = crypto.getRandomValues(words)[0] ?? 0;
  } while (word >= whole);
  return String((word % MOST_NUMBER) + 1);
}

// One entry of the log. Its stored text is the truth: it is written once and never serialised again,
// because 2.0 becomes 2 on the way through a JSON object.
import type {
  AssessSumpResult,
  HoldCheckBody,
  HoldCheckResult,
  MachineTyped,
  PlanCheckBody,
  PlanCheckResult,
  ReadMachineBody,
  ReadMachineResult,
} from "../core/messages";

export const ENTRY_SCHEMA = 1;

export interface Versions {
  readonly build: string;
  readonly pycore: string;
}

interface Common {
  readonly id: string;
  readonly schema: typeof ENTRY_SCHEMA;
  readonly machine: string;
  readonly measured_at: string;
  readonly wall: string;
  readonly versions: Versions;
}

export interface MachineContent extends Common {
  readonly kind: "machine";
  readonly body: ReadMachineBody;
  readonly shown: ReadMachineResult;
  /** The machine's short code, check character included, in the entry that gave it. */
  readonly code?: string;
}

interface Assessed {
  readonly assessment: AssessSumpResult;
}

interface CheckCommon extends Common {
  readonly kind: "check";
}

/** Dip and reading. Without a factor there is no recipe, and the log keeps what could be said. */
export interface WholeContent extends CheckCommon {
  readonly body: PlanCheckBody;
  readonly shown: PlanCheckResult | Assessed;
  /** Which of the other ways was chosen, counted from 0; absent for the main recipe. */
  readonly way?: number;
}

/** A dip alone: the top-up that only keeps the machine going, and a reading that is still open. */
export interface HoldContent extends CheckCommon {
  readonly body: HoldCheckBody;
  readonly shown: HoldCheckResult;
}

export interface ReadingBody {
  readonly machine: MachineTyped;
  readonly reading: PlanCheckBody["reading"];
  /** Kept beside the reading; only a recipe compares the two. */
  readonly second?: NonNullable<PlanCheckBody["second"]>;
}

/** A reading alone: the state, and no recipe. */
export interface ReadingContent extends CheckCommon {
  readonly body: ReadingBody;
  readonly shown: Assessed;
}

export type CheckContent = WholeContent | HoldContent | ReadingContent;
export type CheckShown = CheckContent["shown"];

export type Content = MachineContent | CheckContent;
export type Entry = Content & { readonly log: string; readonly seq: number };
export type MachineEntry = Extract<Entry, { kind: "machine" }>;
export type CheckEntry = Extract<Entry, { kind: "check" }>;
type Stored<T> = T & { readonly log: string; readonly seq: number };
export type WholeEntry = Stored<WholeContent>;
export type HoldEntry = Stored<HoldContent>;
export type ReadingEntry = Stored<ReadingContent>;

/** The row of the store. `seq` and `id` are repeated outside the text only to be found by. */
export interface Row {
  readonly seq: number;
  readonly id: string;
  readonly text: string;
}

export function rowOf(content: Content, log: string, seq: number): Row {
  const { id, schema, kind, ...rest } = content;
  return { seq, id, text: JSON.stringify({ id, log, seq, schema, kind, ...rest }) };
}

/** Null for a line that this build cannot read: such a line is kept and counted, never dropped. */
export function entryOf(row: Row): Entry | null {
  try {
    const value = JSON.parse(row.text) as Partial<Entry> | null;
    if (value === null || typeof value !== "object") return null;
    if (value.schema !== ENTRY_SCHEMA || value.id !== row.id || value.seq !== row.seq) return null;
    const known = value.kind === "machine" || value.kind === "check";
    return known && value.body !== undefined && value.shown !== undefined ? (value as Entry) : null;
  } catch {
    return null;
  }
}

export function hasPlan(shown: CheckShown): shown is PlanCheckResult {
  return "plan" in shown;
}

export function isHolding(check: CheckEntry): check is HoldEntry {
  return "holding" in check.shown;
}

export function hasDip(check: CheckEntry): check is WholeEntry | HoldEntry {
  return "dip" in check.body;
}

export function hasReading(check: CheckEntry): check is WholeEntry | ReadingEntry {
  return "reading" in check.body;
}

export function isWhole(check: CheckEntry): check is WholeEntry {
  return hasDip(check) && hasReading(check);
}

// One entry of the log. Its stored text is the truth: it is written once and never serialised again,
// because 2.0 becomes 2 on the way through a JSON object.
import type {
  AssessSumpResult,
  CalibrateSumpBody,
  CheckContent as CheckContentBody,
  CorrectionContent,
  DecisionContent,
  HoldCheckBody,
  HoldCheckResult,
  MachineTyped,
  PlanCheckBody,
  PlanCheckResult,
  ReadMachineBody,
  ReadMachineResult,
  WithdrawalContent,
} from "../../core/messages";
import type { Standing } from "./amend";
import { isDeed, type Deed } from "../written/deed";
import type { LookPart } from "../underway/looks";

import { isToldDrawable, isToldKind, type ToldContent } from "../written/told";

/** Of the lines that are written. Rows of schema 1 are read as they were stored. */
export const ENTRY_SCHEMA = 2;

export interface Versions {
  readonly build: string;
  readonly pycore: string;
}

export interface Common {
  readonly id: string;
  readonly machine: string;
  readonly measured_at: string;
  readonly wall: string;
  /** Who says so; absent where nobody wrote a name. */
  readonly by?: string;
  readonly versions: Versions;
}

export interface MachineContent extends Common {
  readonly kind: "machine";
  readonly body: ReadMachineBody;
  readonly shown: ReadMachineResult;
  /** The machine's short code, check character included, in the entry that gave it. */
  readonly code?: string;
  /** In the entry that first stored a table found by pouring. */
  readonly pour_test?: CalibrateSumpBody;
}

interface Assessed {
  readonly assessment: AssessSumpResult;
}

/** What was seen, smelled, measured and said before the check stands beside its body, as pycore keeps it. */
type Looked = LookPart["body"] &
  Pick<CheckContentBody, "topped_up_with" | "level_change" | "despite">;

interface CheckCommon extends Common, Looked {
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

/** A look alone: somebody saw that nothing should be added, and stopped. */
export interface LookContent extends CheckCommon {
  readonly body: { readonly machine: MachineTyped };
  readonly shown: Assessed & LookPart["shown"];
}

export type CheckContent = WholeContent | HoldContent | ReadingContent | LookContent;
export type CheckShown = CheckContent["shown"];

/** Entries that carry the set-up of their machine and what was shown. */
export type FullContent = MachineContent | CheckContent;
export type Content = FullContent | ToldContent;

/** An entry about another one: what it says now, or that it is taken back. */
export interface AmendContent extends Omit<Common, "machine"> {
  readonly kind: "correction" | "withdrawal";
  /** Empty for what is about the whole shop. */
  readonly machine: string;
  readonly body: CorrectionContent | WithdrawalContent;
  readonly shown?: object;
}

/** Which of the lines that claim one place count. */
export interface DecideContent extends Omit<Common, "machine"> {
  readonly kind: "decision";
  /** Lines of several machines may claim one place. */
  readonly machine: "";
  readonly body: DecisionContent;
}

export type AnyContent = Content | Deed;
/** What is never drawn by itself, only at the lines that it is about. */
export type AboutContent = AmendContent | DecideContent;
/** What can be stored. */
export type Storable = AnyContent | AboutContent;
/** What others have said of an entry since. */
export interface Amended extends Standing {
  /** As it was written at first. */
  readonly was: Unplaced;
}

/** Where an entry stands: its log, its number in it, and its place in the order of all logs. */
interface Placed {
  readonly log: string;
  readonly seq: number;
  readonly place: number;
  /** Along which its number says what came first: its log, or a part of a log that split. */
  readonly strand: string;
  /** Those that its strand goes on from. */
  readonly earlier: readonly string[];
  /** Absent where it stands as it was written. */
  readonly amended?: Amended;
}

export type AnyEntry = AnyContent & Placed;
/** What the lists of machines and checks are made of; deeds stand beside them. */
export type Entry = Content & Placed;
export type ToldEntry = ToldContent & Placed;
export type StateEntry = Extract<ToldEntry, { kind: "machine_state" }>;
export type DeedEntry = Deed & Placed;
export type PourEntry = Extract<DeedEntry, { kind: "pour" }>;
export type RecheckEntry = Extract<DeedEntry, { kind: "recheck" }>;
export type MachineEntry = Extract<Entry, { kind: "machine" }>;
export type CheckEntry = Extract<Entry, { kind: "check" }>;
type Stored<T> = T & Placed;
export type WholeEntry = Stored<WholeContent>;
export type HoldEntry = Stored<HoldContent>;
export type ReadingEntry = Stored<ReadingContent>;
export type LookEntry = Stored<LookContent>;

/** The row of the store. `seq` and `id` are repeated outside the text only to be found by. */
export interface Row {
  readonly seq: number;
  readonly id: string;
  readonly text: string;
}

type Fields = Readonly<Record<string, unknown>>;

function isObject(value: unknown): value is Fields {
  return value !== null && typeof value === "object" && !Array.isArray(value);
}

/** What the page keeps beside the body; it stands inside it in a line of schema 2. */
export const BESIDE = [
  "way",
  "code",
  "pour_test",
  "look",
  "ph",
  "nitrite",
  "dip_slide",
  "temperature",
  "first_fill_ph",
  "topped_up_with",
  "level_change",
  "despite",
] as const;

/** The kind as it stands in a line. */
export function storedKind(kind: string): string {
  return kind === "machine" ? "machine_set" : kind;
}

function fromSchema2(line: Fields): Fields | null {
  if (!isObject(line["body"])) return null;
  const body = Object.entries(line["body"]);
  const isBeside = ([name]: readonly [string, unknown]): boolean =>
    (BESIDE as readonly string[]).includes(name);
  const kind = line["kind"] === "machine_set" ? "machine" : line["kind"];
  if (isToldKind(kind)) return { ...line, machine: line["machine"] ?? "" };
  return {
    ...line,
    kind,
    body: Object.fromEntries(body.filter((field) => !isBeside(field))),
    ...Object.fromEntries(body.filter(isBeside)),
  };
}

/** The least that every page draws: another app's entry may have shown something else, or nothing. */
function isDrawable({ kind, body, shown }: Fields): boolean {
  if (isObject(body) && isDeed(kind, body, shown)) return true;
  if (isToldKind(kind)) return isObject(body) && isToldDrawable(kind, body);
  if (!isObject(body) || !isObject(body["machine"]) || !isObject(shown)) return false;
  if (kind === "check") return isObject(shown["assessment"]);
  const numbers = shown["shown"];
  if (kind !== "machine" || !isObject(numbers)) return false;
  return ["full_depth", "low", "high"].every((name) => isObject(numbers[name]));
}

/** An entry before its place among all the others is known. */
export type Unplaced = AnyContent & Omit<Placed, "place" | "strand" | "earlier">;

/** A stored text as an object; null where it is none. */
export function parsedLine(text: string): Fields | null {
  try {
    const line: unknown = JSON.parse(text);
    return isObject(line) ? line : null;
  } catch {
    return null;
  }
}

export const TOMBSTONE = "tombstone";

/** What stands where the content of a line was taken out. */
export function isTombstone(line: Fields | null): boolean {
  return line?.["kind"] === TOMBSTONE;
}

/** Null for a line that this build cannot show: such a line is kept and counted, never dropped. */
export function entryFrom(line: Fields | null): Unplaced | null {
  if (line === null) return null;
  if (line["schema"] !== 1 && line["schema"] !== ENTRY_SCHEMA) return null;
  const entry = line["schema"] === 1 ? line : fromSchema2(line);
  return entry !== null && isDrawable(entry) ? (entry as unknown as Unplaced) : null;
}

export function isOfDeed(entry: AnyEntry): entry is DeedEntry {
  return isDeed(entry.kind, entry.body, "shown" in entry ? entry.shown : undefined);
}

/** What stands beside the set-ups, the checks and the deeds. */
export function isTold(content: AnyContent): content is ToldContent {
  const shown = "shown" in content ? content.shown : undefined;
  return isToldKind(content.kind) && !isDeed(content.kind, content.body, shown);
}

const ABOUT: readonly unknown[] = ["correction", "withdrawal", "decision"];

export function isAbout(content: Storable): content is AboutContent {
  return ABOUT.includes(content.kind);
}

/** The same of a line. */
export function aboutFrom(line: Fields | null): AboutContent | null {
  return ABOUT.includes(line?.["kind"]) ? (line as unknown as AboutContent) : null;
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

export function isLookOnly(check: CheckEntry): check is LookEntry {
  return !hasDip(check) && !hasReading(check);
}

export function isWhole(check: CheckEntry): check is WholeEntry {
  return hasDip(check) && hasReading(check);
}

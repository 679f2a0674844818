// Stored lines as the screens need them: which can be used, and in which order.
import { amendedBy, amendmentOf, standingBy, type Amendment, type Standing } from "./amend";
import {
  ENTRY_SCHEMA,
  entryFrom,
  isTombstone,
  parsedLine,
  storedKind,
  type AnyEntry,
  type Unplaced,
} from "./entry";
import { behindOf, decisionOf, settled, type Decision, type Fork } from "./forks";
import type { StoredLine } from "./ledger";
import { hashOfLine } from "./line";
import { strandsOf, type Path, type Strands } from "./strands";

/** The latest time in its log at its machine up to here, milliseconds since 1970. */
export interface Reached {
  /** Of what is used. */
  readonly used: number;
  /** Of that and of pours in doubt. */
  readonly told: number;
}

export interface Line extends StoredLine {
  readonly hash: string;
  readonly log: string;
  /** 0 where it cannot be read. */
  readonly seq: number;
  /** The hash of the line before it. */
  readonly prev: string;
  readonly id: string;
  /** Empty for an entry about the whole shop. */
  readonly machine: string;
  /** The entry that this one corrects or withdraws; empty for most. */
  readonly amends: string;
  readonly amendment: Omit<Amendment, "isDisputed"> | null;
  /** What it decides about lines that claim one place; null for most. */
  readonly decision: Decision | null;
  readonly wall: string;
  /** Null for what this build cannot show. */
  readonly entry: Unplaced | null;
  /** Its content was taken out: what is left keeps the place and the hash of the line. */
  readonly isRemoved: boolean;
  /** Where the lines before it were not all read. */
  readonly reached?: Reached;
  /** With `reached`, where it is not that of the log. */
  readonly strand?: Path;
}

const textOf = (value: unknown): string => (typeof value === "string" ? value : "");

export async function lineOf(stored: StoredLine): Promise<Line> {
  const hash = await hashOfLine(stored.text);
  const bare = {
    ...stored,
    hash,
    log: "",
    seq: 0,
    prev: "",
    id: "",
    machine: "",
    amends: "",
    amendment: null,
    decision: null,
    wall: "",
    entry: null,
    isRemoved: false,
  };
  if (!stored.whole) return bare;
  // Parsed once: a log of years is tens of megabytes.
  const line = parsedLine(stored.text);
  const fields = line ?? {};
  const amendment = amendmentOf(line);
  return {
    ...bare,
    log: textOf(fields["log"]),
    seq: typeof fields["seq"] === "number" ? fields["seq"] : 0,
    prev: textOf(fields["prev"]),
    id: textOf(fields["id"]),
    machine: textOf(fields["machine"]),
    amends: amendment?.target ?? "",
    amendment,
    decision: decisionOf(line),
    wall: textOf(fields["wall"]),
    entry: entryFrom(line),
    isRemoved: isTombstone(line),
  };
}

/** An entry in its place, and the line it stands in. */
export interface Placed {
  readonly entry: AnyEntry;
  readonly line: Line;
  readonly reached: Reached;
}

export interface Sorted {
  /** Used: as they were written, or as they were corrected. */
  readonly placed: readonly Placed[];
  /** Those and what was taken back or contradicts itself: shown as such, and never used. */
  readonly listed: readonly Placed[];
  /** States that nobody may use before people have decided about them; a tag among them still holds. */
  readonly doubtful: readonly AnyEntry[];
  /** Lines that the entries above cannot be understood without. */
  readonly behind: readonly Line[];
  /** Places that several lines claim, decided or not. */
  readonly forks: readonly Fork[];
  readonly strands: Strands;
  /** Not used and not listed: two lines claim one place. */
  readonly apart: number;
  /** Whole, but of a kind or version that this build cannot show. */
  readonly unreadable: number;
  readonly removed: number;
  readonly quarantined: number;
}

type Stranded = Unplaced & Pick<AnyEntry, "strand" | "earlier">;

interface Keyed {
  readonly entry: Stranded;
  readonly line: Line;
  readonly reached: Reached;
}

type Told = Pick<Unplaced, "kind" | "amended">;

export const isUsed = ({ amended: told }: Told): boolean =>
  told === undefined || told.standing === "corrected";

export function wentIn({ kind }: Pick<Unplaced, "kind">): boolean {
  return kind === "pour" || kind === "unknown_addition";
}

/** Logs say different things of it: how much went in is in doubt, not that something did. */
export function isInDoubt(entry: Told): boolean {
  return wentIn(entry) && entry.amended?.standing === "conflict";
}

export const inText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** What is not used stands beside the others and moves none of them. */
function withReached(list: readonly Omit<Keyed, "reached">[]): Keyed[] {
  const latest = { used: new Map<string, number>(), told: new Map<string, number>() };
  return [...list]
    .sort((a, b) => a.entry.seq - b.entry.seq || inText(a.line.hash, b.line.hash))
    .map(({ entry, line }) => {
      const nameIn = (strand: string): string => `${strand} ${entry.machine}`;
      const name = nameIn(entry.strand);
      const names = [name, ...entry.earlier.map(nameIn)];
      const upTo = (which: keyof Reached): number => {
        const own = line.reached?.[which] ?? Date.parse(entry.measured_at);
        const before = names.find((one) => latest[which].has(one)) ?? name;
        return Math.max(latest[which].get(before) ?? 0, own);
      };
      const reached = { used: upTo("used"), told: upTo("told") };
      if (isUsed(entry)) latest.used.set(name, reached.used);
      if (isUsed(entry) || isInDoubt(entry)) latest.told.set(name, reached.told);
      return { entry, line, reached };
    });
}

function sortedBy<T extends Keyed>(which: keyof Reached, list: readonly T[]): T[] {
  return [...list].sort(
    (a, b) =>
      a.reached[which] - b.reached[which] ||
      inText(a.entry.log, b.entry.log) ||
      a.entry.seq - b.entry.seq ||
      inText(a.line.hash, b.line.hash),
  );
}

/**
 * At a machine never against the numbers of a log or of a strand of it; between them by the confirmed time,
 * as pycore orders them. Places are those among all that went in.
 */
function inOrder(
  list: readonly { readonly entry: Unplaced; readonly line: Line }[],
  strands: Strands,
): readonly Placed[] {
  const told = list.map(({ entry, line }) => {
    const [strand, ...earlier] = strands.get(line.hash) ?? ([line.log] as const);
    return { entry: { ...entry, strand, earlier }, line };
  });
  return sortedBy("told", withReached(told)).map(({ entry, ...rest }, place) => ({
    entry: { ...entry, place },
    ...rest,
  }));
}

/** The line as it reads with its correction: content, time and machine of the new one, at the old place. */
function corrected({ text }: Line, said: Amendment): Unplaced | null {
  const line = parsedLine(text);
  if (line === null) return null;
  const { of: kind, content: body, machine, measured_at } = said;
  const { id, log, seq, wall, versions } = line;
  return entryFrom({
    ...{ id, log, seq, wall, versions, schema: ENTRY_SCHEMA, kind, body },
    machine: machine ?? line["machine"],
    measured_at: measured_at ?? line["measured_at"],
    ...("by" in line ? { by: line["by"] } : {}),
    // What was shown of the old numbers would be an old result beside new ones.
    ...(said.shown === null ? {} : { shown: said.shown }),
  });
}

function amended(line: Line, standing: Standing | undefined): Unplaced | null {
  const { entry } = line;
  if (entry === null || standing === undefined) return entry;
  const { said } = standing;
  const now = said === undefined ? entry : corrected(line, said);
  return now === null ? null : { ...now, amended: { ...standing, was: entry } };
}

/** Each once; no copy brings back what was removed. */
function wholeOf(all: readonly Line[]): readonly Line[] {
  const removed = all.filter(({ isRemoved }) => isRemoved);
  const once = new Map([...all, ...removed].map((line) => [line.hash, line]));
  return [...once.values()].filter((line) => line.whole);
}

/** A part of the log counts what is new to it; the rest was counted when the part was chosen. */
const isNew = ({ reached }: Line): boolean => reached === undefined;

export function sortLines(all: readonly Line[]): Sorted {
  const whole = wholeOf(all);
  const { forks, open, leftOut } = settled(whole);
  const strands = strandsOf(whole, forks);
  const counting = whole.filter(({ hash }) => !leftOut.has(hash));
  const amendments = counting.flatMap(({ hash, amendment }) =>
    amendment === null ? [] : [{ ...amendment, isDisputed: open.has(hash) }],
  );
  const groups = amendedBy(amendments);
  const told = counting
    .filter(({ hash, amendment, decision }) => {
      return !open.has(hash) && amendment === null && decision === null;
    })
    .map((line) => ({
      line,
      entry: amended(line, standingBy(groups, line.id, storedKind(line.entry?.kind ?? ""))),
    }));
  const listed = inOrder(
    told.flatMap(({ line, entry }) => (entry === null ? [] : [{ line, entry }])),
    strands,
  );
  const forked = whole.filter(
    ({ hash, entry }) => open.has(hash) && entry?.kind === "machine_state",
  );
  const inConflict = listed.filter(({ entry }) => entry.amended?.standing === "conflict");
  const doubtful = [
    ...inOrder(
      forked.flatMap((line) => (line.entry === null ? [] : [{ line, entry: line.entry }])),
      strands,
    ),
    ...inConflict,
  ];
  return {
    placed: sortedBy(
      "used",
      listed.filter(({ entry }) => isUsed(entry)),
    ),
    listed,
    doubtful: doubtful.map(({ entry }) => entry),
    behind: behindOf(whole, forks),
    forks,
    strands,
    apart: whole.filter((line) => open.has(line.hash) && isNew(line)).length,
    unreadable: told.filter(({ line, entry }) => entry === null && !line.isRemoved && isNew(line))
      .length,
    removed: whole.filter((line) => line.isRemoved && isNew(line)).length,
    quarantined: all.filter((line) => !line.whole && isNew(line)).length,
  };
}

// Corrections and withdrawals, as pycore's journal has them: nothing is changed or deleted, and what an entry
// says now follows from the lines alone. `tests/properties/journal/test_amend_rules.py` holds the two against
// each other.

/** A correction or withdrawal as it stands in its line. */
export interface Amendment {
  readonly id: string;
  readonly log: string;
  readonly seq: number;
  readonly kind: "correction" | "withdrawal";
  /** The entry, or the other amendment, that it is about. */
  readonly target: string;
  /** Other amendments that it decides about. */
  readonly settles: readonly string[];
  readonly reason: string;
  /** Empty where nobody gave a name. */
  readonly by: string;
  /** When it was said. */
  readonly said_at: string;
  /** Of a correction: the kind and the whole new content, and what the page showed of it. */
  readonly of: string;
  readonly content: Fields | null;
  readonly machine: string | null;
  readonly measured_at: string | null;
  readonly shown: Fields | null;
  /** Two lines claim its place: nobody knows which of them counts. */
  readonly isDisputed: boolean;
}

type Fields = Readonly<Record<string, unknown>>;

export interface Standing {
  readonly standing: "corrected" | "withdrawn" | "conflict";
  /** Those that count, or that contradict one another. */
  readonly by: readonly Amendment[];
  /** The correction that the entry now reads with, or read with last before it was withdrawn. */
  readonly said?: Amendment;
}

const textOf = (value: unknown): string => (typeof value === "string" ? value : "");
const fieldsOf = (value: unknown): Fields | null =>
  value !== null && typeof value === "object" && !Array.isArray(value) ? (value as Fields) : null;

/** Null for a line of another kind. */
export function amendmentOf(line: Fields | null): Omit<Amendment, "isDisputed"> | null {
  const kind = line?.["kind"];
  const body = fieldsOf(line?.["body"]);
  if (line === null || body === null) return null;
  if (kind !== "correction" && kind !== "withdrawal") return null;
  // What a later schema means by it nobody here can know.
  if (line["schema"] !== 2) return null;
  const settles = body["settles"];
  return {
    id: textOf(line["id"]),
    log: textOf(line["log"]),
    seq: Number(line["seq"]),
    kind,
    target: textOf(body[kind === "correction" ? "corrects" : "retracts"]),
    settles: Array.isArray(settles) ? settles.map(textOf) : [],
    reason: textOf(body["reason"]),
    by: textOf(line["by"]),
    said_at: textOf(line["measured_at"]),
    of: textOf(body["kind"]),
    content: fieldsOf(body["content"]),
    machine: textOf(body["machine"]) || null,
    measured_at: textOf(body["measured_at"]) || null,
    shown: fieldsOf(line["shown"]),
  };
}

interface Chain {
  readonly amendment: Amendment;
  readonly root: string;
  readonly length: number;
}

/** The entry that each chain of amendments is about; a circle is about one of its own, so about no entry. */
function chainsOf(all: readonly Amendment[]): readonly Chain[] {
  const byId = new Map(all.map((one) => [one.id, one]));
  const found = new Map<string, { readonly root: string; readonly length: number }>();
  for (const { id } of all) {
    const walked = new Set<string>();
    let at = id;
    for (let next = byId.get(at); next !== undefined; next = byId.get(at)) {
      if (found.has(at) || walked.has(at)) break;
      walked.add(at);
      at = next.target;
    }
    const end = found.get(at) ?? { root: at, length: 0 };
    [...walked].reverse().forEach((name, i) => {
      found.set(name, { root: end.root, length: end.length + i + 1 });
    });
  }
  return all.map((amendment) => {
    const end = found.get(amendment.target) ?? { root: amendment.target, length: 0 };
    return { amendment, ...end };
  });
}

/** What a withdrawal that counts has taken back, the outermost looked at first. */
function voidOf(chains: readonly Chain[]): ReadonlySet<string> {
  const ids = new Set(chains.map(({ amendment }) => amendment.id));
  const gone = new Set<string>();
  for (const { amendment } of [...chains].sort((a, b) => b.length - a.length)) {
    const { id, kind, target, isDisputed } = amendment;
    const counts = kind === "withdrawal" && !gone.has(id) && !isDisputed;
    if (counts && ids.has(target)) gone.add(target);
  }
  return gone;
}

/** Those of one entry that no other one takes the place of. */
function survivorsOf(group: readonly Amendment[]): readonly Amendment[] {
  const last = new Map<string, number>();
  for (const { log, seq } of group) last.set(log, Math.max(last.get(log) ?? 0, seq));
  const isNamed = ({ id }: Amendment): boolean =>
    group.some((one) => one.id !== id && (one.target === id || one.settles.includes(id)));
  const isLast = ({ kind, log, seq }: Amendment): boolean =>
    kind === "withdrawal" || seq === last.get(log);
  const left = group.filter((one) => !isNamed(one) && isLast(one));
  return left.length === 0 ? group : left;
}

/** The correction where there is just one and it is of the entry's own kind. */
function clearOf(left: readonly Amendment[], kind: string): { readonly said?: Amendment } {
  const [said, ...more] = left;
  return said?.of === kind && more.length === 0 ? { said } : {};
}

function standingOf(group: readonly Amendment[], kind: string): Standing {
  const left = survivorsOf(group);
  if (group.some(({ isDisputed }) => isDisputed)) return { standing: "conflict", by: group };
  if (left.every((one) => one.kind === "withdrawal")) {
    const before = survivorsOf(group.filter((one) => one.kind === "correction"));
    return { standing: "withdrawn", by: left, ...clearOf(before, kind) };
  }
  const clear = clearOf(left, kind);
  return { standing: clear.said === undefined ? "conflict" : "corrected", by: left, ...clear };
}

/** What amends each entry, by the entry's id. An entry that is not there stands as it was written. */
export function amendedBy(all: readonly Amendment[]): ReadonlyMap<string, readonly Amendment[]> {
  const ids = new Set(all.map(({ id }) => id));
  const chains = chainsOf(all);
  const gone = voidOf(chains);
  const groups = new Map<string, Amendment[]>();
  for (const { amendment, root } of chains) {
    const { id, kind, target } = amendment;
    // A withdrawal of an amendment has done its work by making that one void.
    const isAboutRoot = kind === "correction" || !ids.has(target);
    if (!isAboutRoot || gone.has(id)) continue;
    groups.set(root, [...(groups.get(root) ?? []), amendment]);
  }
  return groups;
}

/** `kind` is that of the stored line. Undefined: as it was written. */
export function standingBy(
  groups: ReadonlyMap<string, readonly Amendment[]>,
  id: string,
  kind: string,
): Standing | undefined {
  const group = groups.get(id);
  return group === undefined ? undefined : standingOf(group, kind);
}

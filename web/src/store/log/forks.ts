// Different lines in one place of a log, and what people decided about them, as pycore's journal has it:
// the app cannot know which of them is true.
import type { Line } from "./lines";

/** What a line of the kind `decision` says, by hashes: it holds for lines that it names, all of them. */
export interface Decision {
  readonly use: readonly string[];
  readonly leave: readonly string[];
  readonly reason: string;
}

type Fields = Readonly<Record<string, unknown>>;

const textsOf = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((text) => typeof text === "string") : [];

/** Null for a line of another kind. */
export function decisionOf(line: Fields | null): Decision | null {
  if (line?.["kind"] !== "decision" || line["schema"] !== 2) return null;
  if (typeof line["body"] !== "object") return null;
  const { use, leave, reason } = (line["body"] ?? {}) as Fields;
  return {
    use: textsOf(use),
    leave: textsOf(leave),
    reason: typeof reason === "string" ? reason : "",
  };
}

/** Lines that claim one number of a log, or one id. */
export interface Fork {
  /** The number with its log, or the id. */
  readonly name: string;
  /** By hash. */
  readonly lines: readonly Line[];
  /** Hashes of those that count; null where nobody has decided, or different logs say different things. */
  readonly chosen: ReadonlySet<string> | null;
  /** Why, as those said who decided; where they differ, all of them. */
  readonly reasons: readonly string[];
}

export interface Settled {
  readonly forks: readonly Fork[];
  /** By hash: lines that wait for a decision, and lines that were decided against. */
  readonly open: ReadonlySet<string>;
  readonly leftOut: ReadonlySet<string>;
}

/** `all` without a line twice. */
function claims(all: readonly Line[]): readonly (readonly [string, readonly Line[]])[] {
  const claimed = new Map<string, Line[]>();
  for (const line of all) {
    const { log, seq, id } = line;
    const names = [...(seq === 0 ? [] : [`${log}.${String(seq)}`]), ...(id === "" ? [] : [id])];
    for (const name of names) {
      const known = claimed.get(name);
      if (known === undefined) claimed.set(name, [line]);
      else known.push(line);
    }
  }
  return [...claimed].filter(([, lines]) => lines.length > 1);
}

const byHash = (a: Line, b: Line): number => (a.hash < b.hash ? -1 : 1);

interface Said {
  readonly log: string;
  readonly decision: Decision;
}

/** Those that were not taken back and stand in no fork themselves, in the order of each log. */
function decisionsIn(all: readonly Line[], disputed: ReadonlySet<string>): readonly Said[] {
  const gone = new Set(
    all.flatMap(({ amendment }) => (amendment?.kind === "withdrawal" ? [amendment.target] : [])),
  );
  return [...all]
    .sort((a, b) => a.seq - b.seq)
    .flatMap(({ log, id, hash, decision }) =>
      decision === null || gone.has(id) || disputed.has(hash) ? [] : [{ log, decision }],
    );
}

/** Inside a log the later decision holds; those of different logs hold only where they agree. */
function decidedBy(
  hashes: readonly string[],
  said: readonly Said[],
): Pick<Fork, "chosen" | "reasons"> {
  const byLog = new Map<string, Decision>();
  for (const { log, decision } of said) {
    const named = new Set([...decision.use, ...decision.leave]);
    if (hashes.every((hash) => named.has(hash))) byLog.set(log, decision);
  }
  const holding = [...byLog.values()];
  const [answer, ...others] = holding.map(({ use }) => hashes.filter((hash) => use.includes(hash)));
  const isSame = others.every((other) => other.join() === answer?.join());
  return {
    chosen: answer !== undefined && isSame ? new Set(answer) : null,
    reasons: [...new Set(holding.map(({ reason }) => reason))],
  };
}

/** `all`: whole lines, each once. */
export function settled(all: readonly Line[]): Settled {
  const twice = claims(all);
  const disputed = new Set(twice.flatMap(([, lines]) => lines.map(({ hash }) => hash)));
  const said = twice.length === 0 ? [] : decisionsIn(all, disputed);
  const forks = twice.map(([name, found]): Fork => {
    const lines = [...found].sort(byHash);
    return {
      name,
      lines,
      ...decidedBy(
        lines.map(({ hash }) => hash),
        said,
      ),
    };
  });
  const hashesOf = (which: (fork: Fork, hash: string) => boolean): ReadonlySet<string> =>
    new Set(
      forks.flatMap((fork) =>
        fork.lines.map(({ hash }) => hash).filter((hash) => which(fork, hash)),
      ),
    );
  return {
    forks,
    open: hashesOf(({ chosen }) => chosen === null),
    leftOut: hashesOf(({ chosen }, hash) => chosen?.has(hash) === false),
  };
}

/** With all lines that claim the place of one of them: alone it would seem certain. */
export function withClaimed(some: readonly Line[], forks: readonly Fork[]): ReadonlySet<Line> {
  const found = new Set(some);
  // Those may themselves stand in another place that is claimed.
  let before = -1;
  while (before !== found.size) {
    before = found.size;
    for (const { lines } of forks)
      if (lines.some((line) => found.has(line))) for (const line of lines) found.add(line);
  }
  return found;
}

/** Lines by which others are understood, or that may hold a machine: with all that claim their place. */
export function behindOf(all: readonly Line[], forks: readonly Fork[]): readonly Line[] {
  const decides = ({ amendment, decision }: Line): boolean =>
    amendment !== null || decision !== null;
  const states = forks
    .flatMap(({ lines }) => lines)
    .filter(({ entry }) => entry?.kind === "machine_state");
  return [...withClaimed([...all.filter(decides), ...states], forks)];
}

// Which lines of a log were written one after another, where several lines claim one number; as pycore's
// journal has it. A phone that was copied goes on twice under one log: from the first claimed number on a
// number says what came first only along one of the two, after what stands before both.
import type { Fork } from "./forks";
import type { Line } from "./lines";

/** The name of a strand, and those that it goes on from, the nearest first. */
export type Path = readonly [string, ...string[]];

/** By the hash of a line; those that are not in it belong to their log. */
export type Strands = ReadonlyMap<string, Path>;

/** Copies of copies farther back count as other logs. */
const MOST_BEFORE = 8;

/** Of each log the first number that several lines claim. */
function firstClaimed(forks: readonly Fork[]): ReadonlyMap<string, number> {
  const first = new Map<string, number>();
  for (const { lines } of forks) {
    const [one] = lines;
    if (one === undefined || one.seq === 0) continue;
    const isNumber = lines.every(({ log, seq }) => log === one.log && seq === one.seq);
    if (isNumber) first.set(one.log, Math.min(first.get(one.log) ?? one.seq, one.seq));
  }
  return first;
}

const followsOf = ({ log, seq, prev }: Line): string => `${log} ${seq} ${prev}`;

/**
 * A strand has the hash of its first line as its name. What a part of the log holds was given its strand when
 * all lines were known; what was added since stands in the own log, which does not split.
 */
export function strandsOf(all: readonly Line[], forks: readonly Fork[]): Strands {
  const found = new Map<string, Path>();
  for (const { hash, reached, strand } of all)
    if (reached !== undefined && strand !== undefined) found.set(hash, strand);
  const first = firstClaimed(forks);
  const split = all.filter(
    ({ log, seq, reached }) => reached === undefined && seq >= (first.get(log) ?? Infinity),
  );
  const known = new Map(split.map((line) => [line.hash, line]));
  const followers = new Map<string, number>();
  for (const line of split) {
    const name = followsOf(line);
    followers.set(name, (followers.get(name) ?? 0) + 1);
  }
  for (const line of split.sort((a, b) => a.seq - b.seq)) {
    const before = known.get(line.prev);
    const follows = before?.log === line.log && before.seq === line.seq - 1;
    const isAlone = followers.get(followsOf(line)) === 1;
    const name = follows && isAlone ? found.get(line.prev) : undefined;
    const earlier = found.get(line.prev) ?? [line.log];
    found.set(line.hash, name ?? [line.hash, ...earlier.slice(0, MOST_BEFORE)]);
  }
  return found;
}

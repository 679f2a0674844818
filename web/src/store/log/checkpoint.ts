// The part of the log that the first pages need, so that the app opens as fast with a log of years as
// with an empty one. It is kept as places of lines, never as their texts: what is shown always comes from
// the lines themselves. Whatever does not fit the stores exactly is thrown away and made anew from all lines.
import type { CleanOutContent } from "../../core/messages";
import { careOf, firstPhs, mostOf } from "./care";
import { withDatabase } from "./database";
import { isOfDeed, type AnyEntry } from "./entry";
import { countedOf, type Counted } from "./exported";
import type { At, Ends } from "./ledger";
import {
  isInDoubt,
  isUsed,
  wentIn,
  type Line,
  type Placed,
  type Reached,
  type Sorted,
} from "./lines";
import { duePartsOf } from "./dueparts";
import type { Path, Strands } from "./strands";
import { isMeasured, PINNED } from "./pinned";

/** The latest entries without a gap among them, of all machines and of each: what the log's page draws at once. */
export const RECENT = 100;
export const RECENT_OF_EACH = 8;
const NAME = "first";

/** How many entries of a machine are not in the part. */
export interface Cold {
  readonly entries: number;
  readonly checks: number;
}

/** `told` where it is not as what is used. */
interface Hot extends At {
  readonly reached: number;
  readonly told?: number;
  /** Where it is not that of its log. */
  readonly strand?: Path;
}

function reachedOf({ reached: used, told = used }: Hot): Reached {
  return { used, told };
}

function hotOf({ own, key, hash }: Line, { used, told }: Reached, strands: Strands): Hot {
  const strand = strands.get(hash);
  return {
    ...{ own, key, reached: used },
    ...(told === used ? {} : { told }),
    ...(strand === undefined ? {} : { strand }),
  };
}

/** What a line of the part is given with it. */
export function givenBy(hot: Hot): Pick<Line, "reached" | "strand"> {
  const { strand } = hot;
  return { reached: reachedOf(hot), ...(strand === undefined ? {} : { strand }) };
}

export interface Checkpoint {
  /** Another build may need another part. */
  readonly build: string;
  /** What the stores held: `head` is the hash of the own log's last line. */
  readonly reach: Omit<Ends, "last"> & { readonly head: string };
  readonly hot: readonly Hot[];
  readonly cold: Readonly<Record<string, Cold>>;
  readonly aside: Pick<Sorted, "apart" | "unreadable" | "removed" | "quarantined">;
  /** Starts of the ids that an own line must not claim again, or that are amended already. */
  readonly claimed: string;
  /** What was in no backup. */
  readonly open: Counted;
}

function isDrained({ steps = [] }: CleanOutContent): boolean {
  return steps.some(({ state }) => state === "drained");
}

/** By what an entry is looked for beyond the latest ones; each is kept once a machine. */
function pinsOf(entry: AnyEntry): readonly string[] {
  if (isOfDeed(entry)) {
    if (entry.kind === "recheck")
      return ["read again", ...(entry.body.reading === undefined ? [] : ["measured again"])];
    if (entry.kind === "plan") return ["plan"];
    return entry.body.recheck_due_at === undefined ? ["pour"] : ["pour", "due"];
  }
  // Each fact of the shop counts by its own latest entry.
  if (entry.kind === "shop_set") return Object.keys(entry.body);
  // One that was begun later does not hide the last one that was finished, or that has emptied the sump.
  if (entry.kind === "clean_out" && entry.body.finished) return [entry.kind, "emptied"];
  if (entry.kind === "clean_out" && isDrained(entry.body)) return [entry.kind, "drained"];
  if (entry.kind !== "check") return [entry.kind];
  const fitting = PINNED.flatMap((fits, i) => (fits(entry) ? [`check ${i}`] : []));
  return ["check", ...fitting, ...careOf(entry)];
}

/** Where a pin is kept once. What is set or stated is few, and of the last of each log the latest counts. */
function placeOf({ kind, machine, strand }: AnyEntry): string {
  const isSet = kind === "machine" || kind === "machine_state" || kind === "shop_set";
  return isSet ? `${machine} ${strand}` : machine;
}

/** Where each machine was measured last: all that went in after it is told, so no bucket is left out. */
function measuredAt(placed: readonly Placed[]): ReadonlyMap<string, number> {
  const last = new Map<string, number>();
  for (const { entry } of placed) {
    const isAgain = isOfDeed(entry) && entry.kind === "recheck" && entry.body.reading !== undefined;
    const isFirst = !isOfDeed(entry) && entry.kind === "check" && isMeasured(entry);
    if (isUsed(entry) && (isAgain || isFirst)) last.set(entry.machine, entry.place);
  }
  return last;
}

/** The last of the own log, of all and at each machine: what is added later is put in order after them. */
function endsOf(entries: readonly AnyEntry[], log: string): readonly AnyEntry[] {
  const ends = new Map<string, AnyEntry>();
  for (const entry of entries) {
    if (entry.log !== log) continue;
    const names = [
      "all",
      ...(isUsed(entry) ? [`used ${entry.machine}`] : []),
      ...(isUsed(entry) || isInDoubt(entry) ? [`told ${entry.machine}`] : []),
    ];
    for (const name of names) if (entry.seq > (ends.get(name)?.seq ?? 0)) ends.set(name, entry);
  }
  return [...ends.values()];
}

/** The places in the order of entries that belong to the part. */
function chosenOf(placed: readonly Placed[], log: string): ReadonlySet<number> {
  const chosen = new Set<number>();
  const seen = new Map<string, number>();
  const isFresh = (name: string, most = 1): boolean => {
    const times = seen.get(name) ?? 0;
    seen.set(name, times + 1);
    return times < most;
  };
  const first = firstPhs(placed.map(({ entry }) => entry).filter(isUsed));
  const measured = measuredAt(placed);
  const byId = new Map(placed.map(({ entry }) => [entry.id, entry]));
  const choose = (entry: AnyEntry | undefined): void => {
    if (entry !== undefined) chosen.add(entry.place);
  };
  for (const { entry } of [...placed].reverse()) {
    const { machine } = entry;
    const isLate = !isOfDeed(entry) && isFresh("", RECENT);
    const isLast = !isOfDeed(entry) && isFresh(` ${machine}`, RECENT_OF_EACH);
    // What is not used is only listed; what it is looked for by is another one.
    const pins = isUsed(entry) ? pinsOf(entry) : [];
    const pinned = pins.filter((pin) => isFresh(`${pin} ${placeOf(entry)}`, mostOf(pin)));
    const hasCode = entry.kind === "machine" && entry.code !== undefined;
    const isSince = wentIn(entry) && entry.place > (measured.get(machine) ?? Infinity);
    if (isLate || isLast || pinned.length > 0 || isSince || hasCode || first.has(entry.id))
      choose(entry);
  }
  // The list says what followed each of its checks.
  for (const { entry } of placed) {
    if (!isOfDeed(entry)) continue;
    const { kind, body } = entry;
    const from = kind === "plan" ? body.check : kind === "pour" ? body.plan : body.of;
    if (chosen.has(byId.get(from)?.place ?? NaN)) choose(entry);
  }
  const entries = placed.map(({ entry }) => entry);
  for (const entry of [...duePartsOf(entries), ...endsOf(entries, log)]) choose(entry);
  // A second reading goes back to the recipe that was poured.
  for (const { entry } of placed) {
    if (!chosen.has(entry.place) || entry.kind !== "pour" || !isOfDeed(entry)) continue;
    const plan = byId.get(entry.body.plan);
    choose(plan);
    if (plan?.kind === "plan") choose(byId.get(plan.body.check));
  }
  return chosen;
}

function coldOf(
  placed: readonly Placed[],
  chosen: ReadonlySet<number>,
  before: Checkpoint | null,
): Readonly<Record<string, Cold>> {
  const cold = new Map<string, Cold>(Object.entries(before?.cold ?? {}));
  for (const { entry } of placed) {
    if (chosen.has(entry.place) || isOfDeed(entry)) continue;
    const { entries, checks } = cold.get(entry.machine) ?? { entries: 0, checks: 0 };
    const isCheck = Number(entry.kind === "check" && isUsed(entry));
    cold.set(entry.machine, { entries: entries + 1, checks: checks + isCheck });
  }
  return Object.fromEntries(cold);
}

const startOf = (id: string): string => ` ${id.slice(0, 8)}`;

/** Whether a line changes nothing about those before it, so that a part can take it in by itself. */
export function isPlain({ id, amends, entry }: Line, { claimed }: Checkpoint): boolean {
  return entry !== null && amends === "" && !claimed.includes(startOf(id));
}

/** Those of a part that no checkpoint stands for; of all lines every one. */
export function addedTo(lines: readonly Line[]): readonly Line[] {
  return lines.filter(({ reached }) => reached === undefined);
}

/** `lines` are all, or those of the part that `before` led to and what was added since. */
export function checkpointOf(
  reach: Checkpoint["reach"],
  lines: readonly Line[],
  { listed, doubtful, behind, apart, unreadable, removed, quarantined, strands }: Sorted,
  before: Checkpoint | null,
): Checkpoint {
  const needed = new Set(behind.map(({ hash }) => hash));
  const inDoubt = new Set(doubtful.map(({ id }) => id));
  const isNeeded = ({ entry, line }: Placed): boolean =>
    needed.has(line.hash) || (entry.kind === "machine_state" && inDoubt.has(entry.id));
  const chosen = new Set([
    ...chosenOf(listed, reach.log),
    ...listed.filter(isNeeded).map(({ entry }) => entry.place),
  ]);
  const hot = listed.filter(({ entry }) => chosen.has(entry.place));
  const inHot = new Set(hot.map(({ line }) => line.hash));
  const foreign = lines.filter(({ own }) => !own).map(({ id }) => id);
  const amended = lines.map(({ amends }) => amends);
  const aside = before?.aside ?? { apart: 0, unreadable: 0, removed: 0, quarantined: 0 };
  return {
    build: __BUILD_ID__,
    reach,
    hot: [
      ...hot.map(({ line, reached }) => hotOf(line, reached, strands)),
      // Without them a part would take what was amended as it was first written.
      ...behind
        .filter(({ hash }) => !inHot.has(hash))
        .map((line) => hotOf(line, { used: 0, told: 0 }, strands)),
    ],
    cold: coldOf(listed, chosen, before),
    aside: {
      apart: aside.apart + apart,
      unreadable: aside.unreadable + unreadable,
      removed: aside.removed + removed,
      quarantined: aside.quarantined + quarantined,
    },
    claimed:
      before?.claimed ??
      [...foreign, ...amended]
        .filter((id) => id !== "")
        .map(startOf)
        .join(""),
    open: countedOf(addedTo(lines), before?.open ?? null),
  };
}

const isObject = (value: unknown): value is object => value !== null && typeof value === "object";

function isHot(at: unknown): boolean {
  const { key, reached, told = reached, strand = [] } = at as Partial<Hot>;
  return [key, reached, told].every(Number.isFinite) && Array.isArray(strand);
}

/** Enough to look with; whether it is right is what the stores say. */
function isCheckpoint(found: unknown): found is Checkpoint {
  if (!isObject(found)) return false;
  const { build, reach, hot, cold, aside, claimed, open } = found as Partial<Checkpoint>;
  return (
    build === __BUILD_ID__ &&
    Number.isFinite(reach?.count) &&
    Array.isArray(hot) &&
    hot.every(isHot) &&
    [cold, aside, open].every(isObject) &&
    typeof claimed === "string"
  );
}

/** Null where there is none, or where it cannot be read or is another build's. */
export async function readCheckpoint(): Promise<Checkpoint | null> {
  const kept = await withDatabase((db) => db.get("about", NAME));
  try {
    const found: unknown = JSON.parse(kept?.text ?? "null");
    return isCheckpoint(found) ? found : null;
  } catch {
    return null;
  }
}

/** For a write that changes what is stored. */
export function dropCheckpointIn(about: { delete(name: string): Promise<void> }): Promise<void> {
  return about.delete(NAME);
}

/** What is lost where it cannot be kept is time at the next start, so nobody is told. */
export async function keepCheckpoint(checkpoint: Checkpoint): Promise<void> {
  const row = { name: NAME, text: JSON.stringify(checkpoint) };
  await withDatabase((db) => db.put("about", row)).catch(() => undefined);
}

// A pour test under way: kept per machine, so that it can stop and go on on any day. The table that
// comes of it goes into the set-up; the test itself is never an entry.
import { signal, type Signal } from "@preact/signals";
import type { CalibrateSumpBody, Typed, Units } from "../../core/messages";
import { dropDraft, readDraft, writeDraft } from "./drafts";

export interface PourStep {
  readonly poured: string;
  readonly depth: string;
  /** When it was kept; steps of an older draft have none. */
  readonly at?: string;
}

/** A top-up of the log with its dips. It counts once somebody says what was poured. */
export interface PourPair {
  /** Of the entry with the dip afterwards. */
  readonly id: string;
  readonly before: Typed;
  readonly after: Typed;
  readonly poured: string;
}

export interface PourTest {
  /** The units that everything here was typed in. */
  readonly units: Units;
  readonly fullDepth: string;
  readonly start: NonNullable<CalibrateSumpBody["start"]> | "";
  readonly startDepth: string;
  readonly vessel: NonNullable<CalibrateSumpBody["vessel_known_by"]>;
  readonly maker: string;
  readonly steps: readonly PourStep[];
  readonly pairs: readonly PourPair[];
  /** The step that is being poured. */
  readonly poured: string;
  readonly depth: string;
  readonly kept: readonly string[];
}

/** Pairs came later than the first drafts. */
type Draft = Omit<PourTest, "pairs"> & Partial<Pick<PourTest, "pairs">>;

function isTest(value: unknown): value is Draft {
  if (value === null || typeof value !== "object") return false;
  const draft = value as Partial<PourTest>;
  const { fullDepth, start, startDepth, vessel, maker, poured, depth } = draft;
  return (
    [fullDepth, start, startDepth, vessel, maker, poured, depth].every(
      (text) => typeof text === "string",
    ) &&
    typeof draft.units === "object" &&
    Array.isArray(draft.steps) &&
    Array.isArray(draft.pairs ?? []) &&
    Array.isArray(draft.kept)
  );
}

const open = new Map<string, Signal<PourTest>>();

/** The test of this machine, or a new one from what its set-up says already. */
export function poursOf(
  machine: string,
  known: Pick<PourTest, "units" | "fullDepth" | "maker" | "poured">,
): Signal<PourTest> {
  const test = open.get(machine);
  if (test !== undefined) return test;
  const draft = readDraft(`pours.${machine}`);
  const fresh: PourTest = {
    start: "",
    startDepth: "",
    vessel: "marks",
    steps: [],
    pairs: [],
    depth: "",
    kept: [],
    ...known,
  };
  const kept = signal<PourTest>(isTest(draft) ? { pairs: [], ...draft } : fresh);
  open.set(machine, kept);
  return kept;
}

export function changePours(
  machine: string,
  test: Signal<PourTest>,
  change: Partial<PourTest>,
): void {
  test.value = { ...test.value, ...change };
  writeDraft(`pours.${machine}`, test.value);
}

/** Used or thrown away: the next test starts from the set-up again. */
export function endPours(machine: string): void {
  dropDraft(`pours.${machine}`);
  open.delete(machine);
}

export function hasPours(machine: string): boolean {
  const test = open.get(machine)?.value ?? readDraft(`pours.${machine}`);
  return isTest(test) && test.steps.length + countedPairs(test.pairs ?? []).length > 0;
}

export function countedPairs(pairs: readonly PourPair[]): readonly PourPair[] {
  return pairs.filter(({ poured }) => poured.trim() !== "");
}

type Stick = Pick<
  CalibrateSumpBody,
  "dip_from" | "reference_height" | "zero_offset" | "rim_depth" | "units"
>;

export function calibrateBody(
  test: PourTest,
  steps: readonly PourStep[],
  stick: Stick,
): CalibrateSumpBody {
  const { units } = test;
  const depth = (text: string): Typed => ({ text, unit: units.stick });
  return {
    full_depth: depth(test.fullDepth),
    start: test.start === "" ? "empty" : test.start,
    ...(test.start === "rest" ? { start_depth: depth(test.startDepth) } : {}),
    steps: steps.map((step) => ({
      poured: { text: step.poured, unit: units.pail },
      depth: depth(step.depth),
      ...(step.at === undefined ? {} : { at: step.at }),
    })),
    pairs: countedPairs(test.pairs).map(({ before, after, poured }) => ({
      before,
      poured: { text: poured, unit: units.pail },
      after,
    })),
    vessel_known_by: test.vessel,
    ...(test.maker.trim() === "" ? {} : { maker_volume: { text: test.maker, unit: units.plate } }),
    ...stick,
  };
}

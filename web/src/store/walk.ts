// The check under way at one machine: what was typed, untouched.
import { signal, type Signal } from "@preact/signals";
import type { AssessSumpBody, MachineTyped, PlanCheckBody, Unit } from "../core/messages";
import { dropDraft, followDrafts, readDraft, writeDraft } from "./drafts";
import { newId } from "./ids";
import type { CheckContent, ReadingBody } from "./entry";

export type Touched = "hard_floor" | "chips";
export type Line = "digital" | "optical" | "optical_oily" | "blurred";
export type Order = "dip_first" | "reading_first";

export interface Walk {
  readonly id: string;
  readonly order: Order;
  readonly dip: string;
  readonly touched: Touched | "";
  readonly reading: string;
  readonly line: Line | "";
  /** Empty: the machine's own aim. */
  readonly aim: string;
  /** Empty: enough concentrate. The unit that stood beside it; the digits mean nothing without. */
  readonly stock: string;
  readonly stockUnit: Unit | "";
  /** Depth of the mark that is filled to this once, in the stick's unit. Empty: the full mark. */
  readonly fill: string;
  /** The usual top-up strength, per cent, for a dip without a reading. Empty: as the log tells. */
  readonly usual: string;
  /** Unusual numbers that the person has looked at again and kept, as "field text". */
  readonly kept: readonly string[];
  /** The entry as it was first sent to the store, so that a retry is the same entry. */
  readonly prepared: CheckContent | null;
}

function emptyWalk(): Walk {
  return {
    id: newId(),
    order: "dip_first",
    dip: "",
    touched: "",
    reading: "",
    line: "",
    aim: "",
    stock: "",
    stockUnit: "",
    fill: "",
    usual: "",
    kept: [],
    prepared: null,
  };
}

const open = new Map<string, Signal<Walk>>();

type Added = "stock" | "stockUnit" | "fill" | "usual";
/** A draft of an older build has none of what was added since; the rest of it still holds. */
type Draft = Omit<Walk, Added> & Partial<Pick<Walk, Added>>;

function isDraft(value: unknown): value is Draft {
  if (value === null || typeof value !== "object") return false;
  const draft = value as Partial<Walk>;
  const texts = [
    draft.id,
    draft.order,
    draft.dip,
    draft.touched,
    draft.reading,
    draft.line,
    draft.aim,
    draft.stock ?? "",
    draft.stockUnit ?? "",
    draft.fill ?? "",
    draft.usual ?? "",
  ];
  return texts.every((text) => typeof text === "string") && Array.isArray(draft.kept);
}

export function walkOf(machine: string): Signal<Walk> {
  const known = open.get(machine);
  if (known !== undefined) return known;
  const walk = signal<Walk>(storedWalk(machine));
  open.set(machine, walk);
  return walk;
}

function storedWalk(machine: string): Walk {
  const draft = readDraft(`walk.${machine}`);
  return isDraft(draft) ? { ...emptyWalk(), ...draft } : emptyWalk();
}

/** What is typed in another window belongs to the same check: an older copy must not write over it. */
export function followWalks(): void {
  followDrafts((name) => {
    for (const [machine, walk] of open)
      if (name === `walk.${machine}`) walk.value = storedWalk(machine);
  });
}

/** A changed answer makes another check: what was prepared for the store no longer stands for it. */
export function changeWalk(machine: string, change: Partial<Walk>): void {
  const walk = walkOf(machine);
  walk.value = { ...walk.value, prepared: null, ...change };
  writeDraft(`walk.${machine}`, walk.value);
}

export function isStarted(walk: Walk): boolean {
  return walk.dip !== "" || walk.reading !== "";
}

export function endWalk(machine: string): void {
  dropDraft(`walk.${machine}`);
  walkOf(machine).value = emptyWalk();
}

export function assessBody(
  machine: MachineTyped,
  walk: Walk,
  parts: { dip: boolean; reading: boolean },
): AssessSumpBody {
  const { sump, fluid, target, units } = machine;
  return {
    sump,
    fluid,
    target,
    units,
    ...(parts.dip ? { dip: dipTyped(machine, walk) } : {}),
    ...(parts.reading ? { reading: readingTyped(walk) } : {}),
  };
}

export function dipTyped(machine: MachineTyped, walk: Walk): PlanCheckBody["dip"] {
  const depth = { text: walk.dip, unit: machine.units.stick };
  return walk.touched === "" ? { depth } : { depth, how: walk.touched };
}

function readingTyped(walk: Walk): PlanCheckBody["reading"] {
  const shows = { text: walk.reading, unit: "Brix" } as const;
  return walk.line === "" ? { shows } : { shows, how: walk.line };
}

/** The mark that is filled to this once; for a recipe as for a top-up without a reading. */
export function fillTyped(machine: MachineTyped, walk: Walk): Pick<PlanCheckBody, "fill_to_depth"> {
  if (walk.fill.trim() === "") return {};
  return { fill_to_depth: { text: walk.fill, unit: machine.units.stick } };
}

function stockTyped(walk: Walk): Pick<PlanCheckBody, "concentrate_at_hand"> {
  if (walk.stock.trim() === "" || walk.stockUnit === "") return {};
  return { concentrate_at_hand: { text: walk.stock, unit: walk.stockUnit } };
}

export function planBody(machine: MachineTyped, walk: Walk): PlanCheckBody {
  return {
    machine,
    dip: dipTyped(machine, walk),
    reading: readingTyped(walk),
    ...(walk.aim === "" ? {} : { aim: { text: walk.aim, unit: "%" } }),
    ...fillTyped(machine, walk),
    ...stockTyped(walk),
  };
}

export function readingBody(machine: MachineTyped, walk: Walk): ReadingBody {
  return { machine, reading: readingTyped(walk) };
}

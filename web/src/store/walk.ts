// The check under way at one machine: what was typed, untouched.
import { signal, type Signal } from "@preact/signals";
import type { AssessSumpBody, MachineTyped, PlanCheckBody, Unit } from "../core/messages";
import { dropDraft, readDraft, writeDraft } from "./drafts";
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
  /** The upper of two marks of a gauge between which the level stands; empty: at the one in dip. */
  readonly gaugeTo: string;
  /** The dip on the clean side of a divided tank. */
  readonly cleanSide: string;
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
    gaugeTo: "",
    cleanSide: "",
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

type Added = "gaugeTo" | "cleanSide" | "stock" | "stockUnit" | "fill" | "usual";
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
    draft.gaugeTo ?? "",
    draft.cleanSide ?? "",
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
  const draft = readDraft(`walk.${machine}`);
  const walk = signal<Walk>(isDraft(draft) ? { ...emptyWalk(), ...draft } : emptyWalk());
  open.set(machine, walk);
  return walk;
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

/** The unit of what is read: the stick's, the printed scale's, or none for a share of a gauge. */
export function dipUnit({ sump, units }: MachineTyped): Unit {
  if (sump.read_as === "gauge") return "1";
  return sump.read_as === "volume" ? units.plate : units.stick;
}

export function dipTyped(machine: MachineTyped, walk: Walk): PlanCheckBody["dip"] {
  const unit = dipUnit(machine);
  const { read_as, dip_from, divided } = machine.sump;
  const isGauge = read_as === "gauge" && walk.gaugeTo !== "";
  const isDivided = divided === true && walk.cleanSide.trim() !== "";
  // What the stick stood on says nothing about a scale, a gauge or a dip from the top.
  const isOnFloor = (read_as ?? "depth") === "depth" && dip_from !== "top";
  return {
    depth: { text: walk.dip, unit },
    ...(isOnFloor && walk.touched !== "" ? { how: walk.touched } : {}),
    ...(isGauge ? { gauge_to: { text: walk.gaugeTo, unit } } : {}),
    ...(isDivided ? { clean_side: { text: walk.cleanSide, unit } } : {}),
  };
}

/** A mark is a depth from where the stick stands, however this machine's level is read. */
export function markBody(machine: MachineTyped, text: string): AssessSumpBody {
  const sump = { ...machine.sump };
  delete sump.dip_from;
  delete sump.reference_height;
  delete sump.zero_offset;
  const { fluid, target, units } = machine;
  const depth = { text, unit: units.stick };
  return { sump, fluid, target, units, dip: { depth, read_as: "depth" } };
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

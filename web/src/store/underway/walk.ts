// The check under way at one machine: what was typed, untouched.
import { signal, type Signal } from "@preact/signals";
import type {
  AssessSumpBody,
  CheckContent as CheckContentBody,
  DipTyped,
  MachineTyped,
  PlanCheckBody,
  SecondTyped,
  Unit,
} from "../../core/messages";
import { dropDraft, followDrafts, readDraft, writeDraft } from "./drafts";
import { newId } from "../log/ids";
import type { CheckContent, ReadingBody } from "../log/entry";

/** What the stick stood on; "moving" where the level was not at rest, on whatever floor. */
export type Touched = "hard_floor" | "chips" | "unsure" | "moving";
export type Line = "digital" | "optical" | "optical_oily" | "blurred";
export type Method = SecondTyped["method"];
export type LevelSaid = NonNullable<CheckContentBody["level_change"]>;
export type WaterUsed = NonNullable<CheckContentBody["topped_up_with"]>;
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
  /** When the reading was typed; the age of the instrument's zero is counted to it. */
  readonly at: string;
  /** Further readings of the same sample, as typed. */
  readonly again: readonly string[];
  /** The further reading that is being typed. */
  readonly againText: string;
  /** Of the glass; asked only of an instrument that does not correct for it. */
  readonly temperature: string;
  /** Parts of water to one of the sample; empty: not diluted. */
  readonly diluted: "1" | "";
  /** What was read before the sample was diluted. */
  readonly undiluted: string;
  readonly method: Method | "";
  readonly secondShows: string;
  /** Empty: the fluid's own. */
  readonly secondFactor: string;
  /** Empty: the machine's own aim. */
  readonly aim: string;
  /** Empty: enough concentrate. The unit that stood beside it; the digits mean nothing without. */
  readonly stock: string;
  readonly stockUnit: Unit | "";
  /** Depth of the mark that is filled to this once, in the stick's unit. Empty: the full mark. */
  readonly fill: string;
  /** The usual top-up strength, per cent, for a dip without a reading. Empty: as the log tells. */
  readonly usual: string;
  /** What a person says of a level that changed more than the log explains. */
  readonly levelChange: LevelSaid | "";
  readonly toppedUpWith: WaterUsed | "";
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
    at: "",
    again: [],
    againText: "",
    temperature: "",
    diluted: "",
    undiluted: "",
    method: "",
    secondShows: "",
    secondFactor: "",
    aim: "",
    stock: "",
    stockUnit: "",
    fill: "",
    usual: "",
    levelChange: "",
    toppedUpWith: "",
    kept: [],
    prepared: null,
  };
}

const open = new Map<string, Signal<Walk>>();

/** A draft of an older build has none of what was added since; the rest of it still holds. */
const ADDED_TEXTS = [
  "gaugeTo",
  "cleanSide",
  "stock",
  "stockUnit",
  "fill",
  "usual",
  "levelChange",
  "toppedUpWith",
  "at",
  "againText",
  "temperature",
  "diluted",
  "undiluted",
  "method",
  "secondShows",
  "secondFactor",
] as const;
type Added = (typeof ADDED_TEXTS)[number] | "again";
type Draft = Omit<Walk, Added> & Partial<Pick<Walk, Added>>;

function isDraft(value: unknown): value is Draft {
  if (value === null || typeof value !== "object") return false;
  const draft = value as Partial<Walk>;
  const { id, order, dip, touched, reading, line, aim, again = [], kept } = draft;
  const texts = [id, order, dip, touched, reading, line, aim];
  const added = ADDED_TEXTS.map((name) => draft[name] ?? "");
  const isText = (text: unknown): boolean => typeof text === "string";
  return [...texts, ...added].every(isText) && Array.isArray(again) && Array.isArray(kept);
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
  const { sump, fluid, target, units, instrument } = machine;
  return {
    sump,
    fluid,
    target,
    units,
    ...(parts.dip ? { dip: dipTyped(machine, walk) } : {}),
    ...(instrument === undefined ? {} : { instrument }),
    ...(parts.reading ? { reading: readingTyped(machine, walk), ...nowOf(walk) } : {}),
  };
}

/** The unit of what is read: the stick's, the printed scale's, or none for a share of a gauge. */
export function dipUnit({ sump, units }: MachineTyped): Unit {
  if (sump.read_as === "gauge") return "1";
  return sump.read_as === "volume" ? units.plate : units.stick;
}

function touchedTyped(touched: Walk["touched"]): Pick<DipTyped, "how" | "waited"> {
  // Nobody said what the stick stood on then, so nothing about it is stored.
  if (touched === "moving") return { waited: false };
  return touched === "" ? {} : { how: touched };
}

/** The answer that a dip was typed with. */
export function touchedOf({ how, waited }: Pick<DipTyped, "how" | "waited">): string {
  return waited === false ? "moving" : (how ?? "");
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
    ...(isOnFloor ? touchedTyped(walk.touched) : {}),
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

/** The unit of the machine's own instrument; without a record of it, Brix. */
export function readingUnit({ instrument }: MachineTyped): Unit {
  if (instrument?.shows === "per_cent") return "%";
  return instrument?.shows === "refractive_index" ? "nD" : "Brix";
}

/** Degrees of the thermometer that lies beside US pails. */
export function warmthUnit({ units }: MachineTyped): Unit {
  return units.pail.startsWith("US") ? "°F" : "°C";
}

function nowOf(walk: Walk): Pick<PlanCheckBody, "now"> {
  return walk.at === "" ? {} : { now: walk.at };
}

export function readingTyped(machine: MachineTyped, walk: Walk): PlanCheckBody["reading"] {
  const unit = readingUnit(machine);
  const again = walk.again.map((text) => ({ text, unit }));
  const temperature = { text: walk.temperature, unit: warmthUnit(machine) };
  return {
    shows: { text: walk.reading, unit },
    ...(walk.line === "" ? {} : { how: walk.line }),
    ...(again.length === 0 ? {} : { again }),
    ...(walk.temperature.trim() === "" ? {} : { temperature }),
    ...(walk.diluted === "" ? {} : { diluted: { text: walk.diluted, unit: "1" } }),
  };
}

export function secondTyped(walk: Walk): Pick<PlanCheckBody, "second"> {
  const { method, secondShows: shows, secondFactor: factor } = walk;
  if (method === "" || shows.trim() === "") return {};
  return {
    second: {
      method,
      shows: { text: shows, unit: "1" },
      ...(factor.trim() === "" ? {} : { factor: { text: factor, unit: "1" } }),
    },
  };
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
    reading: readingTyped(machine, walk),
    ...secondTyped(walk),
    ...nowOf(walk),
    ...(walk.aim === "" ? {} : { aim: { text: walk.aim, unit: "%" } }),
    ...fillTyped(machine, walk),
    ...stockTyped(walk),
  };
}

export function readingBody(machine: MachineTyped, walk: Walk): ReadingBody {
  return { machine, reading: readingTyped(machine, walk), ...secondTyped(walk) };
}

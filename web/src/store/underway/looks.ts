// Look and smell before a check: what was ticked and typed, and what was chosen. It has a draft of its
// own and goes into the entry of the check that follows.
import { signal, type Signal } from "@preact/signals";
import type {
  JudgeLookBody,
  JudgeLookResult,
  LookBackResult,
  MachineTyped,
  Typed,
} from "../../core/messages";
import { dropDraft, readDraft, writeDraft } from "./drafts";
import { dropPrepared } from "./prepared";
import { ownLimits } from "../written/shop";

export type Seen = JudgeLookBody["seen"][number];
/** What a person did with the advice. */
export type Chosen = "went_on" | "done_first" | "all_the_same" | "stopped";

export interface Look {
  readonly seen: readonly Seen[];
  readonly ph: string;
  readonly nitrite: string;
  readonly germs: string;
  readonly warmth: string;
  /** How it smells after circulating; empty: nobody has smelled again. */
  readonly again: "" | "gone" | "still";
  /** What of the foam's causes was looked into, in order, without a find. */
  readonly foamNot: number;
  /** Whether one of them could not be told. */
  readonly foamUnsure: boolean;
  /** What the foam was found to come from; empty: nobody has looked. */
  readonly foamFrom: "" | NonNullable<JudgeLookBody["foam_from"]>;
  /** Instead of what log and set-up know; empty: as they say. */
  readonly firstPh: string;
  readonly chosen: Chosen | "";
  /** When it was chosen: a look holds for one check and not for days. */
  readonly at: string;
  readonly advice: JudgeLookResult | null;
}

const NOTHING: Look = {
  seen: [],
  ph: "",
  nitrite: "",
  germs: "",
  warmth: "",
  again: "",
  foamNot: 0,
  foamUnsure: false,
  foamFrom: "",
  firstPh: "",
  chosen: "",
  at: "",
  advice: null,
};
/** Coolant changes over a shift: common practice, no source. */
const HOLDS_MS = 4 * 3_600_000;

const open = new Map<string, Signal<Look>>();

function isLook(value: unknown): value is Look {
  if (value === null || typeof value !== "object") return false;
  const { seen, ph, nitrite, germs, warmth, again, chosen, at } = value as Partial<Look>;
  return (
    Array.isArray(seen) &&
    [ph, nitrite, germs, warmth, again, chosen, at].every((text) => typeof text === "string")
  );
}

export function lookOf(machine: string): Signal<Look> {
  const known = open.get(machine);
  if (known !== undefined) return known;
  const draft = readDraft(`look.${machine}`);
  // A draft of an older build has none of what was added since.
  const look = signal<Look>(isLook(draft) ? { ...NOTHING, ...draft } : NOTHING);
  open.set(machine, look);
  return look;
}

/** Another answer asks for another advice, for a choice of its own, and makes another check. */
export function changeLook(machine: string, change: Partial<Look>): void {
  const look = lookOf(machine);
  look.value = { ...look.value, chosen: "", advice: null, ...change };
  writeDraft(`look.${machine}`, look.value);
  dropPrepared(machine);
}

/** As long as nobody has looked into what the foam comes from. */
export const FOAM_OPEN = { foamFrom: "", foamNot: 0, foamUnsure: false } as const;

/** The usual answer, in one tap: nothing ticked, nothing measured. */
export function seeNothing(machine: string, at: string): void {
  changeLook(machine, {
    seen: [],
    again: "",
    ...FOAM_OPEN,
    chosen: "went_on",
    at,
  });
}

export function endLook(machine: string): void {
  dropDraft(`look.${machine}`);
  lookOf(machine).value = NOTHING;
}

export function isLooked(machine: string): boolean {
  const { chosen, at } = lookOf(machine).value;
  return chosen !== "" && Date.now() - Date.parse(at) < HOLDS_MS;
}

/** Nothing unusual has been ticked or measured so far. */
export function isNormal(look: Look): boolean {
  return look.seen.length === 0 && !isMeasured(look);
}

export function isMeasured({ ph, nitrite, germs, warmth }: Look): boolean {
  return [ph, nitrite, germs, warmth].some((text) => text.trim() !== "");
}

function measured({ ph, nitrite, germs, warmth }: Look, warmthUnit: Typed["unit"]) {
  const given = (text: string): boolean => text.trim() !== "";
  return {
    ...(given(ph) ? { ph: { text: ph, unit: "1" as const } } : {}),
    ...(given(nitrite) ? { nitrite: { text: nitrite, unit: "mg/L" as const } } : {}),
    ...(given(germs) ? { dip_slide: { germs: { text: germs, unit: "CFU/mL" as const } } } : {}),
    ...(given(warmth) && warmthUnit !== undefined
      ? { temperature: { text: warmth, unit: warmthUnit } }
      : {}),
  };
}

/** As much as a question takes; the rule looks at the last few. */
const MOST_BEFORE = 200;

/** pH at the first fill: as somebody has just typed it, else as the log knows it. */
function firstPhOf(
  { firstPh }: Look,
  earlier: LookBackResult | null,
): Pick<NonNullable<LookBackResult["first_fill_ph"]>, "ph"> | undefined {
  if (firstPh.trim() !== "") return { ph: { text: firstPh, unit: "1" } };
  return earlier?.first_fill_ph;
}

export function judgeBody(
  { fluid }: MachineTyped,
  look: Look,
  warmthUnit: Typed["unit"],
  earlier: LookBackResult | null = null,
): JudgeLookBody {
  const { type } = fluid;
  const first = firstPhOf(look, earlier)?.ph ?? fluid.first_fill_ph;
  const nitrite = earlier?.nitrite_before.map((row) => row.nitrite) ?? [];
  const limits = ownLimits.value;
  return {
    seen: [...look.seen],
    ...(type === "neat_oil" ? {} : { fluid_type: type }),
    ...(first === undefined ? {} : { first_fill_ph: first }),
    ...measured(look, warmthUnit),
    ...(nitrite.length === 0 ? {} : { nitrite_before: nitrite.slice(-MOST_BEFORE) }),
    ...(look.again === "" ? {} : { smell_again: look.again }),
    ...(look.foamFrom === "" ? {} : { foam_from: look.foamFrom }),
    ...(limits === null ? {} : { limits }),
  };
}

export interface LookPart {
  readonly body: Pick<
    JudgeLookBody,
    "ph" | "nitrite" | "dip_slide" | "temperature" | "first_fill_ph"
  > & {
    readonly look?: readonly Seen[];
  };
  readonly shown: { readonly look?: Pick<Look, "chosen"> & Partial<JudgeLookResult> };
}

/** What the entry of a check keeps of its look: what was seen, the advice and the choice. */
export function lookPart(machine: string, warmthUnit: Typed["unit"]): LookPart {
  if (!isLooked(machine)) return { body: {}, shown: {} };
  const look = lookOf(machine).value;
  return {
    body: {
      look: look.seen.length === 0 ? ["normal"] : look.seen,
      ...measured(look, warmthUnit),
      ...(look.firstPh.trim() === "" ? {} : { first_fill_ph: { text: look.firstPh, unit: "1" } }),
    },
    shown: { look: { ...(look.advice ?? {}), chosen: look.chosen } },
  };
}

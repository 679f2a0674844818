// Facts of the shop, as entries of the log: a backup, an import and a merge carry them, and each counts
// by its own latest entry, as pycore folds them.
import { computed, type ReadonlySignal } from "@preact/signals";
import type { JudgeLookBody, ShopSetContent, Typed } from "../../core/messages";
import { newId } from "../log/ids";
import { opened, recent, save } from "../log/journal";
import { latestOf } from "../log/latest";
import type { Saved } from "../log/entries";
import { dropNote, readNote } from "../phone/notes";
import { isoWithOffset } from "../../words/times";

export type LookLimits = NonNullable<JudgeLookBody["limits"]>;
type Fact = Exclude<keyof ShopSetContent, "remarks">;
/** Days from check to check, from clean-out to clean-out; per cent of the full sump lost in a day. */
export type CareFact = "check_every_d" | "clean_out_every_d" | "most_lost_pct_d";

function latest<F extends Fact>(fact: F): ReadonlySignal<ShopSetContent[F] | undefined> {
  return computed(() => {
    const told = recent.value.filter((entry) => entry.kind === "shop_set");
    return latestOf(told.filter(({ body }) => body[fact] !== undefined))?.body[fact];
  });
}

const limits = latest("look_limits");
const who = latest("who_to_ask");
const care = {
  check_every_d: latest("check_every_d"),
  clean_out_every_d: latest("clean_out_every_d"),
  most_lost_pct_d: latest("most_lost_pct_d"),
};

/** Null where the shop has none of its own. */
export const ownLimits: ReadonlySignal<LookLimits | null> = computed(() => limits.value ?? null);
/** Empty where nobody has said. */
export const whoToAsk: ReadonlySignal<string> = computed(() => who.value ?? "");
/** As typed; empty: the published interval, or common practice. */
export const careOf = (fact: CareFact): string => care[fact].value?.text ?? "";

/** As the log has it: neither days nor a share of the sump have another unit. */
export function typedCare(fact: CareFact, text: string): Typed {
  return { text: text.trim(), unit: fact === "most_lost_pct_d" ? "%" : "1" };
}

/** Nothing here comes from pycore, so that nothing waits for it: not even for its version. */
export function saveFact(id: string, body: ShopSetContent): Promise<Saved> {
  const now = isoWithOffset(new Date());
  const versions = { build: __BUILD_ID__, pycore: "" };
  return save({ id, kind: "shop_set", machine: "", measured_at: now, wall: now, body, versions });
}

type Note = Readonly<Record<string, unknown>>;

/** The facts that older builds kept on the phone, by the name of their note. */
const NOTED: Readonly<Record<string, (note: Note) => ShopSetContent>> = {
  limits: (note) => ({ look_limits: note }),
  care: ({ check, cleanOut }) => ({
    ...(isDays(check) ? { check_every_d: typedCare("check_every_d", check) } : {}),
    ...(isDays(cleanOut) ? { clean_out_every_d: typedCare("clean_out_every_d", cleanOut) } : {}),
  }),
};

const isDays = (text: unknown): text is string => typeof text === "string" && text.trim() !== "";

function isSet(fact: string): boolean {
  return recent.value.some((entry) => entry.kind === "shop_set" && Object.hasOwn(entry.body, fact));
}

/** A note goes once its facts are in the log; a fact that is there already goes before it. */
export async function moveNotes(): Promise<void> {
  for (const [name, factsOf] of Object.entries(NOTED)) {
    const noted = readNote(name);
    if (opened.value.kind !== "ready" || noted === null || typeof noted !== "object") continue;
    const facts = Object.entries(factsOf(noted as Note)).filter(([fact]) => !isSet(fact));
    const body = Object.fromEntries(facts) as ShopSetContent;
    if (facts.length === 0 || (await saveFact(newId(), body)).kind === "saved") dropNote(name);
  }
}

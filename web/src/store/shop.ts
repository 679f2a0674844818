// Facts of the shop, as entries of the log: a backup, an import and a merge carry them, and each counts
// by its own latest entry, as pycore folds them.
import { computed, type ReadonlySignal } from "@preact/signals";
import type { JudgeLookBody, ShopSetContent } from "../core/messages";
import { newId } from "./ids";
import { entries, load, save } from "./journal";
import type { Saved } from "./entries";
import { dropNote, readNote } from "./notes";
import { isoWithOffset } from "../words/times";

export type LookLimits = NonNullable<JudgeLookBody["limits"]>;
type Fact = "who_to_ask" | "look_limits";

function latest<F extends Fact>(fact: F): ReadonlySignal<ShopSetContent[F] | undefined> {
  return computed(
    () =>
      entries.value
        .filter((entry) => entry.kind === "shop_set")
        .filter(({ body }) => body[fact] !== undefined)
        .at(-1)?.body[fact],
  );
}

const limits = latest("look_limits");
const who = latest("who_to_ask");

/** Null where the shop has none of its own. */
export const ownLimits: ReadonlySignal<LookLimits | null> = computed(() => limits.value ?? null);
/** Empty where nobody has said. */
export const whoToAsk: ReadonlySignal<string> = computed(() => who.value ?? "");

/** Nothing here comes from pycore, so that nothing waits for it: not even for its version. */
export function saveFact(id: string, body: ShopSetContent): Promise<Saved> {
  const now = isoWithOffset(new Date());
  const versions = { build: __BUILD_ID__, pycore: "" };
  return save({ id, kind: "shop_set", machine: "", measured_at: now, wall: now, body, versions });
}

const NOTE = "limits";

/** Limits were a note on the phone before they stood in the log. The note goes once they are there. */
export async function moveLimits(): Promise<void> {
  const noted = readNote(NOTE);
  if (load.value.kind !== "ready" || noted === null || typeof noted !== "object") return;
  const isThere = limits.value !== undefined;
  const done = isThere || (await saveFact(newId(), { look_limits: noted })).kind === "saved";
  if (done) dropNote(NOTE);
}

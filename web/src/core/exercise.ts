// A browser keeps the compiled code of a runtime only once enough of it has run often; a start with it
// is a tenth quicker, on a slow phone a fifth. So the first long visit of a build does some sums that nobody
// asked for, and the next morning does not wait until a dozen checks have been made.
import { effect } from "@preact/signals";
import { readSetting, writeSetting } from "../store/phone/settings";
import type { Core } from "./client";
import { isServedFromPhone } from "./connection";

/** Long after the first page is drawn and its files are proven. */
const BEGIN_AFTER_MS = 20_000;
/** With the questions below 400 sums; 160 were too few, as tried in Chromium. */
const ROUNDS = 100;
/** Between two rounds: a question that a person asks waits for one sum at the most. */
const REST_MS = 20;
const DONE = "exercised";

/** Once for each build, at a start from the phone's own storage. Call before the first answer. */
export function exerciseOnce(core: Core): void {
  if (!isServedFromPhone() || readSetting(DONE) === __BUILD_ID__) return;
  let isPlanned = false;
  effect(() => {
    if (isPlanned || core.phase.value.kind !== "ready") return;
    isPlanned = true;
    setTimeout(() => void exercise(core), BEGIN_AFTER_MS);
  });
}

async function exercise(core: Core): Promise<void> {
  const plan = (await import("../../../shared/examples/check/plan_check/plan_check.json")).default
    .request.body;
  const recipe = (await import("../../../shared/examples/check/plan_recipe/plan_recipe.json"))
    .default.request.body;
  const sump = (await import("../../../shared/examples/check/assess_sump/assess_sump.json")).default
    .request.body;
  for (let round = 0; round < ROUNDS; round += 1) {
    const answers = [
      await core.ask("plan_check", plan as never),
      await core.ask("plan_recipe", recipe),
      await core.ask("assess_sump", sump as never),
      await core.ask("describe", {}),
    ];
    if (answers.some(({ kind }) => kind !== "ok")) return;
    await new Promise((rested) => setTimeout(rested, REST_MS));
  }
  writeSetting(DONE, __BUILD_ID__);
}

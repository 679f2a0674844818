// Reads what was typed at a step through pycore, so that the log holds no number that nobody can read.
import type { Core } from "../../core/client";
import type { Cleaning, CleanState } from "../../store/cleaning";
import type { MachineEntry } from "../../store/entry";
import { errorSentence } from "../../words/errors";
import { say } from "../../words/say";
import { askedAt } from "./fields";

export type Faults = Readonly<Record<string, string>>;

/** Empty where everything can be read, or where nothing is typed that must be a number. */
export async function faultsAt(
  core: Core,
  machine: MachineEntry,
  state: CleanState,
  cleaning: Cleaning,
): Promise<Faults> {
  const found: Record<string, string> = {};
  for (const { name, quantity, unit, must } of askedAt(state, cleaning)) {
    const text = (cleaning.texts[name] ?? "").trim();
    if (quantity === null || (text === "" && must !== true)) continue;
    const units = machine.body.machine.units;
    const answer = await core.ask("read_quantity", {
      text,
      quantity,
      unit: unit === "plate" ? units.plate : "%",
    });
    if (answer.kind === "error") found[name] = errorSentence(answer.error, say("clean.number"));
    // Without its numbers there is no recipe: only then the calculator is waited for.
    else if (answer.kind !== "ok" && must === true) found[name] = say("recipe.starting");
  }
  return found;
}

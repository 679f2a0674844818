// Reads what was typed at a step through pycore, so that the log holds no number that nobody can read.
import type { Core } from "../../core/client";
import type { Cleaning, CleanState } from "../../store/underway/cleaning";
import type { MachineEntry } from "../../store/log/entry";
import { errorSentence } from "../../words/errors";
import { say } from "../../words/say";
import { askedAt, fieldWord } from "./asked";

/** A fault belongs to the text that it was found in: with another text it is gone. */
export interface FaultOf {
  readonly text: string;
  readonly said: string;
}
export type Faults = Readonly<Record<string, FaultOf>>;

export function faultFor(faults: Faults, name: string, text: string): string | undefined {
  const fault = faults[name];
  return fault?.text === text ? fault.said : undefined;
}

/** Empty where everything can be read, or where nothing is typed that must be a number. */
export async function faultsAt(
  core: Core,
  machine: MachineEntry,
  state: CleanState,
  cleaning: Cleaning,
): Promise<Faults> {
  const found: Record<string, FaultOf> = {};
  for (const { name, quantity, unit, must } of askedAt(state, cleaning)) {
    const typed = cleaning.texts[name] ?? "";
    const text = typed.trim();
    const fault = (said: string): void => {
      found[name] = { text: typed, said };
    };
    if (quantity === null || (text === "" && must !== true)) continue;
    const units = machine.body.machine.units;
    const answer = await core.ask("read_quantity", {
      text,
      quantity,
      unit: unit === "plate" ? units.plate : "%",
    });
    if (answer.kind === "error") fault(errorSentence(answer.error, fieldWord(name)));
    // Without its numbers there is no recipe: only then the calculator is waited for.
    else if (answer.kind !== "ok" && must === true) fault(say("recipe.starting"));
  }
  return found;
}

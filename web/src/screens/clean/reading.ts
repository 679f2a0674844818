// Reads what was typed at a step through pycore, so that the log holds no number that nobody can read.
import type { Core } from "../../core/client";
import type { MachineTyped } from "../../core/messages";
import type { Cleaning, CleanState } from "../../store/underway/cleaning";
import type { MachineEntry } from "../../store/log/entry";
import { errorSentence } from "../../words/errors";
import { say } from "../../words/say";
import { chargeBody } from "./charge";
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

/** The field of a step that a fault of the new charge is about; null where it is about the set-up. */
const nameFrom = (path: string): string | null =>
  /^body\.(left|left_strength)$/.exec(path)?.[1] ?? null;

/** What the new charge cannot be worked out from: a strength that is missing, more than the sump holds. */
async function chargeFault(
  core: Core,
  machine: MachineTyped,
  cleaning: Cleaning,
): Promise<{ readonly name: string; readonly said: string } | null> {
  const body = chargeBody(machine, cleaning);
  const answer = body === null ? null : await core.ask("plan_charge", body);
  if (answer?.kind !== "error") return null;
  const name = nameFrom(answer.error.path);
  return name === null ? null : { name, said: errorSentence(answer.error, fieldWord(name)) };
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
  if (state !== "left" || Object.keys(found).length > 0) return found;
  const fault = await chargeFault(core, machine.body.machine, cleaning);
  return fault === null
    ? found
    : { [fault.name]: { text: cleaning.texts[fault.name] ?? "", said: fault.said } };
}

// Gives a machine its short code: drawn by chance here, since pycore has no chance of its own, and
// stored as an entry of the machine. A code that was given once is never changed.
import { useEffect, useState } from "preact/hooks";
import type { Core } from "../../core/client";
import type { StoreTrouble } from "../../store/log/trouble";
import type { MachineEntry } from "../../store/log/entry";
import { newId } from "../../store/log/ids";
import { codeOf, machineByCode } from "../../store/log/codes";
import { save } from "../../store/log/journal";
import { machineById } from "../../store/log/machines";
import { isoWithOffset } from "../../words/times";
import { useCore } from "../core";

/** Four signs out of 31, as make_code counts them. */
const CODES = 31 ** 4;
const DRAWS = 2 ** 32;
/** With a thousand machines one draw in 900 meets a code that is taken; twenty in a row do not. */
const MOST_DRAWS = 20;

export type Giving =
  | { readonly kind: "given"; readonly code: string }
  | { readonly kind: "waiting" }
  | { readonly kind: "down" }
  | { readonly kind: "not_saved"; readonly trouble: StoreTrouble };

/** Every number equally likely: draws from the incomplete last round are thrown away. */
function drawNumber(): number {
  const draw = new Uint32Array(1);
  do crypto.getRandomValues(draw);
  while ((draw[0] ?? 0) >= DRAWS - (DRAWS % CODES));
  return (draw[0] ?? 0) % CODES;
}

async function freeCode(core: Core): Promise<string | null> {
  for (let draws = 0; draws < MOST_DRAWS; draws += 1) {
    const answer = await core.ask("make_code", { code_number: drawNumber() });
    if (answer.kind !== "ok") return null;
    if (machineByCode(answer.result.code) === undefined) return answer.result.code;
  }
  return null;
}

async function giveCode(core: Core, machine: MachineEntry): Promise<Giving> {
  const code = await freeCode(core);
  if (code === null) return { kind: "down" };
  const now = isoWithOffset(new Date());
  // What was answered about the set-up is repeated as it stands, with the versions that answered it.
  const { body, shown, versions } = machineById(machine.machine) ?? machine;
  const outcome = await save({
    id: newId(),
    kind: "machine",
    machine: machine.machine,
    measured_at: now,
    wall: now,
    body,
    shown,
    versions,
    code,
  });
  return outcome.kind === "saved" ? { kind: "given", code } : outcome;
}

const underWay = new Map<string, Promise<Giving>>();

/** Two pages, or a page that was opened twice, wait for the same code. */
function giveOnce(core: Core, machine: MachineEntry): Promise<Giving> {
  const id = machine.machine;
  const giving = underWay.get(id) ?? giveCode(core, machine);
  underWay.set(id, giving);
  return giving.finally(() => {
    underWay.delete(id);
  });
}

/** The machine's code; a machine that has none is given one, where `wanted`. */
export function useCode(machine: MachineEntry | null, wanted: boolean): Giving {
  const core = useCore();
  const [giving, setGiving] = useState<Giving>({ kind: "waiting" });
  const code = machine === null ? undefined : codeOf(machine.machine);
  const isMissing = machine !== null && wanted && code === undefined;
  const isFailed = core.phase.value.kind === "failed";
  useEffect(() => {
    if (isMissing && !isFailed) void giveOnce(core, machine).then(setGiving);
    // Another entry of the machine is no reason to ask again.
  }, [core, isMissing, isFailed, machine?.machine]);
  return code === undefined ? giving : { kind: "given", code };
}

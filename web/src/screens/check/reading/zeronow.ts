// A zero taken in the middle of a check: an entry that repeats the set-up with the new zero in it.
import { useState } from "preact/hooks";
import type { Core } from "../../../core/client";
import type { InstrumentTyped, MachineTyped, ZeroTyped } from "../../../core/messages";
import type { MachineEntry } from "../../../store/log/entry";
import { newId } from "../../../store/log/ids";
import { save } from "../../../store/log/journal";
import { readingUnit, warmthUnit } from "../../../store/underway/walk";
import { isoWithOffset } from "../../../words/times";
import { useCore } from "../../core";
import { putBeside } from "../../setup/openforms";
import { readVersions } from "../../versions";
import type { Saving } from "../save";

/** The machine with this zero; null where nobody wrote the instrument down. */
export function withZero(machine: MachineTyped, zero: ZeroTyped): MachineTyped | null {
  const { instrument } = machine;
  if (instrument === undefined) return null;
  const changed: InstrumentTyped = { ...instrument, zero };
  return { ...machine, instrument: changed };
}

export function zeroTyped(machine: MachineTyped, shows: string, warmth: string): ZeroTyped {
  const temperature = { text: warmth, unit: warmthUnit(machine) };
  return {
    shows: { text: shows, unit: readingUnit(machine) },
    on: isoWithOffset(new Date()),
    ...(warmth.trim() === "" ? {} : { temperature }),
  };
}

async function store(core: Core, machine: MachineEntry, zero: ZeroTyped): Promise<Saving> {
  const changed = withZero(machine.body.machine, zero);
  if (changed === null) return { kind: "open" };
  const answer = await core.ask("read_machine", { machine: changed });
  if (answer.kind !== "ok") return { kind: "not_saved", trouble: "other" };
  const now = isoWithOffset(new Date());
  const outcome = await save({
    id: newId(),
    kind: "machine",
    machine: machine.machine,
    measured_at: now,
    wall: now,
    body: { machine: changed },
    shown: answer.result,
    versions: await readVersions(core),
  });
  if (outcome.kind === "not_saved") return outcome;
  const { shows, on = "", temperature } = zero;
  const part = { zeroShows: shows.text, zeroOn: on, zeroTemperature: temperature?.text ?? "" };
  putBeside(machine, { ...part, zeroWater: "unknown" });
  return { kind: "open" };
}

/** Keeps a zero and goes on; where that fails, the page says so and what was typed stays. */
export function useZero(machine: MachineEntry, onKept: () => void) {
  const core = useCore();
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const keep = async (zero: ZeroTyped): Promise<void> => {
    setSaving({ kind: "saving" });
    const done = await store(core, machine, zero);
    setSaving(done);
    if (done.kind === "open") onKept();
  };
  return {
    saving,
    keep: (zero: ZeroTyped): void => {
      if (saving.kind !== "saving") void keep(zero);
    },
  };
}

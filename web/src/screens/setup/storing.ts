// Saving a machine: prepared once, so that pressing again after a failure is the same entry.
import { useState } from "preact/hooks";
import type { MachineTyped, ReadMachineResult } from "../../core/messages";
import type { MachineContent } from "../../store/log/entry";
import { save } from "../../store/log/journal";
import { machineById } from "../../store/log/machines";
import { changeWalk } from "../../store/underway/walk";
import { isoWithOffset } from "../../words/times";
import type { Saving } from "../check/save";
import { useCore } from "../core";
import { replace } from "../route";
import { readVersions } from "../versions";
import { machineOf, type Form } from "./form";
import { pourTestPart } from "./tank/tank";

/** What gives the digits of a dip their meaning. */
function levelTaken({ sump, units }: MachineTyped): string {
  const { read_as = "depth", dip_from = "bottom", divided = false } = sump;
  const unit = read_as === "volume" ? `${units.plate} ${units.stick}` : units.stick;
  return [unit, read_as, dip_from, divided].join();
}

export function useStoring(form: Form, onSaved: () => void) {
  const core = useCore();
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const [prepared, setPrepared] = useState<MachineContent | null>(null);
  const store = async (shown: ReadMachineResult): Promise<void> => {
    setSaving({ kind: "saving" });
    const now = isoWithOffset(new Date());
    const content: MachineContent = prepared ?? {
      id: form.entry,
      kind: "machine",
      machine: form.machine,
      measured_at: now,
      wall: now,
      body: { machine: machineOf(form) },
      shown,
      versions: await readVersions(core),
      ...pourTestPart(form),
    };
    setPrepared(content);
    const before = machineById(form.machine)?.body.machine;
    const outcome = await save(content);
    if (outcome.kind === "not_saved") {
      setSaving({ kind: "not_saved", trouble: outcome.trouble });
      return;
    }
    if (before !== undefined && levelTaken(before) !== levelTaken(content.body.machine)) {
      // Digits that were typed for another unit or another way are another depth: asked for anew.
      changeWalk(form.machine, { dip: "", gaugeTo: "", cleanSide: "", touched: "", fill: "" });
    }
    replace("machines", form.machine);
    onSaved();
  };
  return { saving, store };
}

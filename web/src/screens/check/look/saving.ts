// Stopping after the look: the check is saved with what was seen and nothing measured at the sump.
import { useState } from "preact/hooks";
import { endDespite } from "../../../store/written/despite";
import { newId } from "../../../store/log/ids";
import type { CheckContent, MachineEntry } from "../../../store/log/entry";
import { save } from "../../../store/log/journal";
import { endLook, lookPart, type LookPart } from "../../../store/underway/looks";
import { warmthUnit } from "../../../store/underway/walk";
import { isoWithOffset } from "../../../words/times";
import { useCore } from "../../core";
import { replace } from "../../route";
import { readVersions } from "../../versions";
import { useOnce } from "../once";
import { saidPart, type Saving } from "../save";

type Seen = LookPart & ReturnType<typeof saidPart>;

export function useSavingLook(machine: MachineEntry) {
  const core = useCore();
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const [own] = useState(newId);
  const id = machine.machine;
  const typed = machine.body.machine;
  const prepared = useOnce(async ({ body, shown, ...said }: Seen): Promise<CheckContent> => {
    const now = isoWithOffset(new Date());
    return {
      id: own,
      kind: "check",
      machine: id,
      measured_at: now,
      wall: now,
      ...body,
      ...said,
      body: { machine: typed },
      shown: { assessment: { notes: [] }, ...shown },
      versions: await readVersions(core),
    };
  });
  const store = async (): Promise<void> => {
    setSaving({ kind: "saving" });
    const seen = { ...lookPart(id, warmthUnit(typed)), ...saidPart(id, null) };
    const outcome = await save(await prepared(seen));
    if (outcome.kind === "not_saved") {
      setSaving({ kind: "not_saved", trouble: outcome.trouble });
      return;
    }
    replace("machines", id, "saved", outcome.row.id);
    endLook(id);
    endDespite(id);
  };
  return {
    saving,
    press: (): void => {
      if (saving.kind !== "saving") void store();
    },
  };
}

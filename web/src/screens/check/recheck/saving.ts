// Saving a second reading: prepared once, so that pressing again after a failure is the same entry.
import { useState } from "preact/hooks";
import type { RecheckContent } from "../../../store/written/deed";
import { newId } from "../../../store/log/ids";
import { save } from "../../../store/log/journal";
import { endWalk } from "../../../store/underway/walk";
import { isoWithOffset } from "../../../words/times";
import { useCore } from "../../core";
import { replace } from "../../route";
import { readVersions } from "../../versions";
import type { Saving } from "../save";

export type Told = Pick<RecheckContent, "body" | "shown">;

export function useSavingAgain(machine: string, draft: string, id: string | null) {
  const core = useCore();
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const [own] = useState(newId);
  const press = async ({ body, shown }: Told): Promise<void> => {
    setSaving({ kind: "saving" });
    const now = isoWithOffset(new Date());
    const outcome = await save({
      id: id ?? own,
      kind: "recheck",
      machine,
      measured_at: body.now ?? now,
      wall: now,
      body,
      shown,
      versions: await readVersions(core),
    });
    if (outcome.kind === "not_saved") {
      setSaving({ kind: "not_saved", trouble: outcome.trouble });
      return;
    }
    replace("machines", machine, "recheck", "done", outcome.row.id);
    endWalk(draft);
  };
  return {
    saving,
    press: (told: Told): void => {
      if (saving.kind !== "saving") void press(told);
    },
  };
}

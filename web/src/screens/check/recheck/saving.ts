// Saving a second reading, or that there will be none.
import { useState } from "preact/hooks";
import type { RecheckContent } from "../../../store/written/deed";
import { newId } from "../../../store/log/ids";
import { save } from "../../../store/log/journal";
import { endWalk } from "../../../store/underway/walk";
import { isoWithOffset } from "../../../words/times";
import { useCore } from "../../core";
import { replace } from "../../route";
import { readVersions } from "../../versions";
import { useOnce } from "../once";
import type { Saving } from "../save";

export type Told = Pick<RecheckContent, "body" | "shown">;

export function useSavingAgain(machine: string, draft: string, id: string | null) {
  const core = useCore();
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const [own] = useState(newId);
  const prepared = useOnce(async ({ body, shown }: Told): Promise<RecheckContent> => {
    const now = isoWithOffset(new Date());
    return {
      id: id ?? own,
      kind: "recheck",
      machine,
      measured_at: body.now ?? now,
      wall: now,
      body,
      shown,
      versions: await readVersions(core),
    };
  });
  const press = async (told: Told): Promise<void> => {
    setSaving({ kind: "saving" });
    const outcome = await save(await prepared(told));
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

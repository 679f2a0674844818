// Saving a check: prepared once, so that pressing again after a failure is the same entry.
import { useState } from "preact/hooks";
import { save } from "../../store/journal";
import type { CheckContent, CheckShown, MachineEntry } from "../../store/entry";
import type { StoreTrouble } from "../../store/database";
import { changeWalk, endWalk, planBody, type Walk } from "../../store/walk";
import { isoWithOffset } from "../../words/times";
import type { Core } from "../../core/client";
import { useCore } from "../core";
import { replace } from "../route";
import { readVersions } from "../versions";

export type Saving =
  | { readonly kind: "open" }
  | { readonly kind: "saving" }
  | { readonly kind: "not_saved"; readonly trouble: StoreTrouble };

async function prepare(
  core: Core,
  machine: MachineEntry,
  walk: Walk,
  shown: CheckShown,
  way: number | undefined,
): Promise<CheckContent> {
  const now = isoWithOffset(new Date());
  return {
    id: walk.id,
    schema: 1,
    kind: "check",
    machine: machine.machine,
    measured_at: now,
    wall: now,
    body: planBody(machine.body.machine, walk),
    shown,
    ...(way === undefined ? {} : { way }),
    versions: await readVersions(core),
  };
}

export function useSaving(
  machine: MachineEntry,
  walk: Walk,
  shown: CheckShown | null,
  way?: number,
) {
  const core = useCore();
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const press = async (recipe: CheckShown): Promise<void> => {
    setSaving({ kind: "saving" });
    // Prepared for another way, it would be another entry.
    const same = walk.prepared?.way === way ? walk.prepared : null;
    const content = same ?? (await prepare(core, machine, walk, recipe, way));
    changeWalk(machine.machine, { prepared: content });
    const outcome = await save(content);
    if (outcome.kind === "not_saved") {
      setSaving({ kind: "not_saved", trouble: outcome.trouble });
      return;
    }
    // The place first: a screen of an ended walk would otherwise lead away.
    replace("machines", machine.machine, "saved", outcome.row.id);
    endWalk(machine.machine);
  };
  return {
    saving,
    press: (): void => {
      if (shown !== null && saving.kind !== "saving") void press(shown);
    },
  };
}

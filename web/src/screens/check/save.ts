// Saving a check: prepared once, so that pressing again after a failure is the same entry.
import { useState } from "preact/hooks";
import { save } from "../../store/log/journal";
import type {
  CheckContent,
  HoldContent,
  MachineEntry,
  ReadingContent,
  WholeContent,
} from "../../store/log/entry";
import type { StoreTrouble } from "../../store/log/trouble";
import { despiteOf, endDespite } from "../../store/written/despite";
import { endLook, lookPart } from "../../store/underway/looks";
import { changeWalk, endWalk, planBody, warmthUnit, type Walk } from "../../store/underway/walk";
import { isoWithOffset } from "../../words/times";
import type { Core } from "../../core/client";
import { useCore } from "../core";
import { replace } from "../route";
import { readVersions } from "../versions";

type SaidPart = Pick<CheckContent, "despite" | "level_change" | "topped_up_with">;

export type Saving =
  | { readonly kind: "open" }
  | { readonly kind: "saving" }
  | { readonly kind: "not_saved"; readonly trouble: StoreTrouble };

/** What was asked and what came back: whole, or with the dip or the reading left open. */
export type Answered =
  | Pick<WholeContent, "body" | "shown" | "way">
  | Pick<HoldContent, "body" | "shown">
  | Pick<ReadingContent, "body" | "shown">;

/** What follows at the page that says Saved: nothing, or the first bucket at once. */
export type Onward = readonly [] | readonly ["pour"];

/** What a person said beside what was measured: the tag that was seen, the level, the water. */
export function saidPart(machine: string, walk: Walk | null): SaidPart {
  const despite = despiteOf(machine);
  return {
    ...(despite === undefined ? {} : { despite }),
    ...(walk === null || walk.levelChange === "" ? {} : { level_change: walk.levelChange }),
    ...(walk === null || walk.toppedUpWith === "" ? {} : { topped_up_with: walk.toppedUpWith }),
  };
}

/** When what is typed as the reading was read; empty where nothing was. */
export function readAt({ reading, at }: Walk): string {
  return reading.trim() === "" ? "" : at;
}

/** Unusual numbers that somebody looked at once more and kept: the log says that it was asked. */
function keptPart({ kept }: Walk): { readonly kept?: readonly string[] } {
  return kept.length === 0 ? {} : { kept };
}

async function prepare(
  core: Core,
  machine: MachineEntry,
  walk: Walk,
  answered: Answered,
): Promise<CheckContent> {
  const now = isoWithOffset(new Date());
  const look = lookPart(machine.machine, warmthUnit(machine.body.machine));
  return {
    id: walk.id,
    kind: "check",
    machine: machine.machine,
    measured_at: now,
    wall: now,
    ...answered,
    ...look.body,
    ...saidPart(machine.machine, walk),
    // The advice and what was chosen stand beside what the page showed of the recipe.
    shown: { ...answered.shown, ...look.shown, ...keptPart(walk) },
    versions: await readVersions(core),
  };
}

export function useSaving(
  machine: MachineEntry,
  walk: Walk,
  shown: WholeContent["shown"] | null,
  way?: number,
  onward: Onward = [],
) {
  const body = planBody(machine.body.machine, walk);
  const chosen = way === undefined ? {} : { way };
  return useSavingOf(machine, walk, shown === null ? null : { body, shown, ...chosen }, onward);
}

/** Prepared for another way, it would be another entry. */
function isSameWay(prepared: CheckContent, answered: Answered): boolean {
  const wayOf = (part: object): unknown => ("way" in part ? part.way : undefined);
  return wayOf(prepared) === wayOf(answered);
}

export function useSavingOf(
  machine: MachineEntry,
  walk: Walk,
  answered: Answered | null,
  onward: Onward = [],
) {
  const core = useCore();
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const press = async (answer: Answered): Promise<void> => {
    setSaving({ kind: "saving" });
    const { prepared } = walk;
    const isSame = prepared !== null && isSameWay(prepared, answer);
    const content = isSame ? prepared : await prepare(core, machine, walk, answer);
    changeWalk(machine.machine, { prepared: content });
    const outcome = await save(content);
    if (outcome.kind === "not_saved") {
      setSaving({ kind: "not_saved", trouble: outcome.trouble });
      return;
    }
    // The place first: a screen of an ended walk would otherwise lead away.
    replace("machines", machine.machine, "saved", outcome.row.id, ...onward);
    endWalk(machine.machine);
    endLook(machine.machine);
    endDespite(machine.machine);
  };
  return {
    saving,
    press: (): void => {
      if (answered !== null && saving.kind !== "saving") void press(answered);
    },
  };
}

// The end of a pour, or of a part of it: what really went in goes into the log.
import { useState } from "preact/hooks";
import type { Typed } from "../../../core/messages";
import type { BucketRow, PourContent } from "../../../store/written/deed";
import type { MachineEntry } from "../../../store/log/entry";
import { newId } from "../../../store/log/ids";
import { save } from "../../../store/log/journal";
import {
  changePouring,
  endPouring,
  type Pouring,
  type Tick,
} from "../../../store/underway/pouring";
import { isoWithOffset } from "../../../words/times";
import type { Core } from "../../../core/client";
import { useCore } from "../../core";
import { replace } from "../../route";
import { readVersions } from "../../versions";
import type { Saving } from "../save";

const MINUTE_MS = 60_000;

export interface Outcome {
  readonly rows: readonly BucketRow[];
  readonly out: Typed | undefined;
  /** False: the rest is poured later, and `ticks` is where it goes on. */
  readonly finished: boolean;
  readonly ticks: readonly Tick[];
  readonly evenly: boolean;
  /** Whether anything of the recipe was poured, now or in a part before. */
  readonly isIn: boolean;
  /** How long the pump runs before the second reading. */
  readonly minutes: number;
}

export function dueAt(last: string, minutes: number): string {
  return isoWithOffset(new Date(Date.parse(last) + minutes * MINUTE_MS));
}

async function prepare(
  core: Core,
  machine: MachineEntry,
  pouring: Pouring,
  outcome: Outcome,
): Promise<PourContent> {
  const now = isoWithOffset(new Date());
  const { rows, out, finished, ticks, evenly, isIn, minutes } = outcome;
  const last = ticks.at(-1)?.at ?? now;
  const lot = machine.body.machine.fluid.batch;
  return {
    id: pouring.id,
    kind: "pour",
    machine: machine.machine,
    measured_at: last,
    wall: now,
    body: {
      plan: pouring.plan.id,
      pours: rows,
      finished,
      ...(out === undefined ? {} : { draw_off: out }),
      ...(finished && isIn ? { recheck_due_at: dueAt(last, minutes) } : {}),
      ...(lot === undefined || lot.trim() === "" ? {} : { lot }),
      ...(rows.length > 0 && evenly ? { looked_even: true } : {}),
    },
    versions: await readVersions(core),
  };
}

export function useFinish(machine: MachineEntry, pouring: Pouring) {
  const core = useCore();
  const id = machine.machine;
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const press = async (outcome: Outcome): Promise<void> => {
    setSaving({ kind: "saving" });
    const { prepared } = pouring;
    const isSame =
      prepared !== null && JSON.stringify(prepared.body.pours) === JSON.stringify(outcome.rows);
    const content =
      isSame && prepared.body.finished === outcome.finished
        ? prepared
        : await prepare(core, machine, pouring, outcome);
    changePouring(id, { prepared: content });
    const saved = await save(content);
    if (saved.kind === "not_saved") {
      setSaving({ kind: "not_saved", trouble: saved.trouble });
      return;
    }
    replace("machines", id, "pour", "done", saved.row.id);
    if (outcome.finished) endPouring(id);
    else
      changePouring(id, {
        id: newId(),
        ticks: outcome.ticks,
        logged: outcome.ticks.length,
      });
  };
  return {
    saving,
    finish: (outcome: Outcome): void => {
      if (saving.kind !== "saving") void press(outcome);
    },
  };
}

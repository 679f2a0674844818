// A clean-out as entries: the clean-out itself, the first reading, the pH that later ones are compared
// with, and how the machine is used now. All are prepared once and written in this order.
import { useState } from "preact/hooks";
import type { Core } from "../../core/client";
import type { AssessSumpResult, BucketRow, MachineTyped, Typed, Unit } from "../../core/messages";
import { changeCleaning, endCleaning, type Cleaning } from "../../store/underway/cleaning";
import type { AnyContent, Common, MachineEntry, Storable } from "../../store/log/entry";
import { newId } from "../../store/log/ids";
import { entryById, save } from "../../store/log/journal";
import { heldOf, statedOf } from "../../store/log/machines";
import { readingUnit } from "../../store/underway/walk";
import { say } from "../../words/say";
import { isoWithOffset } from "../../words/times";
import type { Saving } from "../check/save";
import { useCore } from "../core";
import { withdrawalOf } from "../correct/saving";
import { readVersions } from "../versions";
import { reached } from "./steps";

export function typedOf(text: string | undefined, unit: Unit): Typed | undefined {
  return text === undefined || text.trim() === "" ? undefined : { text: text.trim(), unit };
}

function filled<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  const given = Object.entries(fields).filter(([, value]) => value !== undefined && value !== "");
  return Object.fromEntries(given) as { [K in keyof T]?: Exclude<T[K], undefined> };
}

/** The fields that a finished and a stopped clean-out have in common. */
function bodyOf(machine: MachineTyped, { texts, ticks }: Cleaning) {
  const { plate } = machine.units;
  return {
    steps: reached(ticks),
    ...filled({
      cleaner: texts["cleaner"]?.trim(),
      waste: typedOf(texts["waste"], plate),
      waste_note: texts["waste_note"]?.trim(),
      rinse: typedOf(texts["rinse"], plate),
      left: typedOf(texts["left"], plate),
      left_strength: typedOf(texts["left_strength"], "%"),
      lot: texts["lot"]?.trim(),
      remarks: texts["remarks"]?.trim(),
    }),
  };
}

async function common(core: Core, machine: string, id: string): Promise<Common> {
  const now = isoWithOffset(new Date());
  return { id, machine, measured_at: now, wall: now, versions: await readVersions(core) };
}

/** The set-up with the new first-fill pH; null where none was typed or pycore refuses it. */
async function withPh(core: Core, machine: MachineEntry, ph: Typed): Promise<AnyContent | null> {
  const typed = machine.body.machine;
  const changed = { ...typed, fluid: { ...typed.fluid, first_fill_ph: ph } };
  const answer = await core.ask("read_machine", { machine: changed });
  if (answer.kind !== "ok") return null;
  return {
    ...(await common(core, machine.machine, newId())),
    kind: "machine",
    body: { machine: changed },
    shown: answer.result,
  };
}

/** What a stopped clean-out told stands in this one too: counted twice it would be poured twice. */
async function takingPlace(
  core: Core,
  machine: string,
  { continues }: Cleaning,
): Promise<readonly Storable[]> {
  const stopped = continues === null ? undefined : entryById(continues);
  if (stopped === undefined) return [];
  const said = withdrawalOf(stopped, say("clean.continued"));
  return [{ ...said, ...(await common(core, machine, newId())) }];
}

async function finished(
  core: Core,
  machine: MachineEntry,
  cleaning: Cleaning,
  charge: readonly BucketRow[],
  assessment: AssessSumpResult | null,
): Promise<readonly Storable[]> {
  const { texts } = cleaning;
  const id = machine.machine;
  const typed = machine.body.machine;
  const shows = typedOf(texts["reading"], readingUnit(typed));
  const ph = typedOf(texts["ph"], "1");
  const all: Storable[] = [
    {
      ...(await common(core, id, cleaning.id)),
      kind: "clean_out",
      body: { finished: true, ...bodyOf(typed, cleaning), charge: [...charge] },
    },
    ...(await takingPlace(core, id, cleaning)),
  ];
  if (ph !== undefined) {
    const setUp = await withPh(core, machine, ph);
    if (setUp !== null) all.push(setUp);
  }
  if (shows !== undefined && assessment !== null)
    all.push({
      ...(await common(core, id, newId())),
      kind: "check",
      body: { machine: typed, reading: { shows } },
      ...(ph === undefined ? {} : { ph }),
      shown: { assessment },
    });
  if (statedOf(id)?.body.state === "clean_out")
    all.push({
      ...(await common(core, id, newId())),
      kind: "machine_state",
      body: { state: "in_use" },
    });
  return all;
}

/** Writes what was prepared, one after the other; what is there already is found and not doubled. */
async function writeAll(machine: string, all: readonly Storable[]): Promise<Saving> {
  changeCleaning(machine, { prepared: all });
  for (const content of all) {
    const outcome = await save(content);
    if (outcome.kind === "not_saved") return outcome;
  }
  return { kind: "open" };
}

/** `onSaved` is called before the draft ends: the page of an ended clean-out would lead away. */
export function useSavingClean(machine: MachineEntry, onSaved: () => void) {
  const core = useCore();
  const id = machine.machine;
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const store = async (prepare: () => Promise<readonly Storable[]>): Promise<void> => {
    setSaving({ kind: "saving" });
    const done = await writeAll(id, await prepare());
    setSaving(done);
    if (done.kind !== "open") return;
    onSaved();
    endCleaning(id);
  };
  const press = (prepare: () => Promise<readonly Storable[]>): void => {
    if (saving.kind !== "saving") void store(prepare);
  };
  return {
    saving,
    finish: (
      cleaning: Cleaning,
      charge: readonly BucketRow[],
      assessment: AssessSumpResult | null,
    ): void => {
      press(async () =>
        cleaning.prepared === null
          ? finished(core, machine, cleaning, charge, assessment)
          : cleaning.prepared,
      );
    },
    stop: (cleaning: Cleaning, charge: readonly BucketRow[]): void => {
      press(async () => {
        if (cleaning.prepared !== null) return cleaning.prepared;
        const body = {
          finished: false,
          ...bodyOf(machine.body.machine, cleaning),
          ...(charge.length === 0 ? {} : { charge: [...charge] }),
        };
        return [
          { ...(await common(core, id, cleaning.id)), kind: "clean_out", body },
          ...(await takingPlace(core, id, cleaning)),
        ];
      });
    },
  };
}

/**
 * At the first tick the machine is told to be in a clean-out, so that its checks rest everywhere. A tag that
 * hangs is not taken away by it: only a named person does that.
 */
export async function tellState(core: Core, machine: string): Promise<Saving> {
  const isTold = statedOf(machine)?.body.state === "clean_out";
  if (isTold || heldOf(machine) !== undefined) return { kind: "open" };
  const outcome = await save({
    ...(await common(core, machine, newId())),
    kind: "machine_state",
    body: { state: "clean_out" },
  });
  return outcome.kind === "not_saved" ? outcome : { kind: "open" };
}

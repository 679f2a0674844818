// Saving what was decided: kept at every key, prepared once, so that pressing again is the same entry.
import { useState } from "preact/hooks";
import type { DecisionContent } from "../../core/messages";
import type { Fork } from "../../store/log/forks";
import type { DecideContent } from "../../store/log/entry";
import { newId } from "../../store/log/ids";
import { save } from "../../store/log/journal";
import { keepName, ownName } from "../../store/phone/name";
import { dropDraft, readDraft, writeDraft } from "../../store/underway/drafts";
import { say } from "../../words/say";
import { isoWithOffset } from "../../words/times";
import { useOnce } from "../check/once";
import type { Saving } from "../check/save";
import { useCore } from "../core";
import { replace } from "../route";
import { readVersions } from "../versions";

export interface Draft {
  /** Hashes of the lines that count, or `NONE`; empty: nothing was said yet. */
  readonly ticked: readonly string[];
  readonly reason: string;
  readonly by: string;
}

/** In the address where the name of a place stands. */
export const ALL = "all";
/** Stands among the ticks: of all lines none counts. */
export const NONE = "none";
/** As many lines as a decision may name. */
const MOST_NAMED = 50;

function isDraft(value: unknown): value is Draft {
  const draft = value as Partial<Draft> | null;
  return (
    Array.isArray(draft?.ticked) &&
    draft.ticked.every((one) => typeof one === "string") &&
    [draft.reason, draft.by].every((text) => typeof text === "string")
  );
}

export type Choice = Pick<DecisionContent, "use" | "leave">;

/** In as few entries as hold all: none may name only some of the lines of a place. */
function inFew(choices: readonly Choice[]): readonly Choice[] {
  const few: Choice[] = [];
  for (const { use, leave } of choices) {
    const last = few.at(-1);
    const named = last === undefined ? Infinity : last.use.length + last.leave.length;
    if (last !== undefined && named + use.length + leave.length <= MOST_NAMED)
      few[few.length - 1] = { use: [...last.use, ...use], leave: [...last.leave, ...leave] };
    else few.push({ use, leave });
  }
  return few;
}

export function choiceOf({ lines }: Fork, isUsed: (hash: string) => boolean): Choice {
  const hashes = lines.map(({ hash }) => hash);
  return { use: hashes.filter(isUsed), leave: hashes.filter((hash) => !isUsed(hash)) };
}

interface Told {
  readonly choices: readonly Choice[];
  readonly reason: string;
  readonly by: string;
}

/** `name`: of the place, or of all of them. `ticked`: as it was decided before. */
export function useDeciding(name: string, ticked: readonly string[] = []) {
  const core = useCore();
  const kept = `claimed.${name}`;
  const [draft, setDraft] = useState<Draft>(() => {
    const read = readDraft(kept);
    return isDraft(read) ? read : { ticked, reason: "", by: ownName() };
  });
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const prepare = useOnce(async ({ choices, reason, by }: Told): Promise<DecideContent[]> => {
    const now = isoWithOffset(new Date());
    const versions = await readVersions(core);
    return choices.map((choice) => ({
      id: newId(),
      kind: "decision" as const,
      machine: "" as const,
      measured_at: now,
      wall: now,
      ...(by === "" ? {} : { by }),
      body: { ...choice, reason: reason === "" ? say("amend.no_reason") : reason },
      versions,
    }));
  });
  const store = async (choices: readonly Choice[]): Promise<void> => {
    setSaving({ kind: "saving" });
    const [reason, by] = [draft.reason.trim(), draft.by.trim()];
    for (const content of await prepare({ choices, reason, by })) {
      // Pressed again, what is stored already is not stored twice.
      const outcome = await save(content);
      if (outcome.kind === "not_saved") {
        setSaving({ kind: "not_saved", trouble: outcome.trouble });
        return;
      }
    }
    if (by !== "") keepName(by);
    dropDraft(kept);
    replace("log", "claimed", name, "saved");
  };
  return {
    draft,
    saving,
    change: (change: Partial<Draft>): void => {
      const next = { ...draft, ...change };
      setDraft(next);
      writeDraft(kept, next);
    },
    press: (choices: readonly Choice[]): void => {
      if (saving.kind !== "saving") void store(inFew(choices));
    },
  };
}

export type Deciding = ReturnType<typeof useDeciding>;

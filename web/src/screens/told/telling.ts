// A form of what is told: kept at every key, prepared once, so that a second press is the same entry.
import { useState } from "preact/hooks";
import { dropDraft, readDraft, writeDraft } from "../../store/drafts";
import { newId } from "../../store/ids";
import { save } from "../../store/journal";
import type { ToldContent } from "../../store/told";
import { isoWithOffset } from "../../words/times";
import type { Saving } from "../check/save";
import { replace } from "../route";

/** A kind with its body, before it has a place and a time. */
export type Said = ToldContent extends infer T
  ? T extends ToldContent
    ? Pick<T, "kind" | "body">
    : never
  : never;

interface Draft {
  readonly id: string;
  readonly texts: Readonly<Record<string, string>>;
}

function isDraft(value: unknown): value is Draft {
  const draft = value as Partial<Draft> | null;
  return (
    typeof draft?.id === "string" &&
    typeof draft.texts === "object" &&
    Object.values(draft.texts).every((text) => typeof text === "string")
  );
}

export interface Telling {
  /** What was typed or chosen under a name; empty at first. */
  readonly text: (name: string) => string;
  readonly change: (name: string, text: string) => void;
  readonly saving: Saving;
  readonly press: (said: Said) => void;
}

/** `machine` is empty for what is about the whole shop. */
export function useTelling(machine: string, what: string): Telling {
  const name = `told.${machine}.${what}`;
  const [draft, setDraft] = useState<Draft>(() => {
    const kept = readDraft(name);
    return isDraft(kept) ? kept : { id: newId(), texts: {} };
  });
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const [prepared, setPrepared] = useState<ToldContent | null>(null);
  const store = async (said: Said): Promise<void> => {
    setSaving({ kind: "saving" });
    const now = isoWithOffset(new Date());
    const place = { id: draft.id, machine, measured_at: now, wall: now };
    // Nothing here comes from pycore, so that nothing waits for it: not even for its version.
    const versions = { build: __BUILD_ID__, pycore: "" };
    const content = prepared ?? { ...said, ...place, versions };
    setPrepared(content);
    const outcome = await save(content);
    if (outcome.kind === "not_saved") {
      setSaving({ kind: "not_saved", trouble: outcome.trouble });
      return;
    }
    dropDraft(name);
    replace(...(machine === "" ? ["told"] : ["machines", machine, "told"]), outcome.row.id);
  };
  return {
    text: (field) => draft.texts[field] ?? "",
    change: (field, text) => {
      const next = { ...draft, texts: { ...draft.texts, [field]: text } };
      setDraft(next);
      setPrepared(null);
      writeDraft(name, next);
    },
    saving,
    press: (said) => {
      if (saving.kind !== "saving") void store(said);
    },
  };
}

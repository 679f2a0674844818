// A form of what is told: kept at every key, prepared once, so that a second press is the same entry.
import { useState } from "preact/hooks";
import { dropDraft, readDraft, writeDraft } from "../../store/underway/drafts";
import { newId } from "../../store/log/ids";
import { save } from "../../store/log/journal";
import { keepName } from "../../store/phone/name";
import type { ToldContent } from "../../store/written/told";
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
  /** Of the second entry, where a press makes two. */
  readonly also: string;
  readonly texts: Readonly<Record<string, string>>;
}

function isDraft(value: unknown): value is Draft {
  const draft = value as Partial<Draft> | null;
  return (
    typeof draft?.id === "string" &&
    typeof draft.also === "string" &&
    typeof draft.texts === "object" &&
    Object.values(draft.texts).every((text) => typeof text === "string")
  );
}

interface More {
  readonly by?: string;
  readonly also?: Said | undefined;
}

export interface Telling {
  /** What was typed or chosen under a name; empty at first. */
  readonly text: (name: string) => string;
  readonly isTyped: (name: string) => boolean;
  /** `more` changes others with it. */
  readonly change: (name: string, text: string, more?: Draft["texts"]) => void;
  readonly saving: Saving;
  /** `also` is saved after it, as an entry of its own. */
  readonly press: (said: Said, more?: More) => void;
}

/** `machine` is empty for what is about the whole shop. */
export function useTelling(machine: string, what: string): Telling {
  const name = `told.${machine}.${what}`;
  const [draft, setDraft] = useState<Draft>(() => {
    const kept = readDraft(name);
    return isDraft(kept) ? kept : { id: newId(), also: newId(), texts: {} };
  });
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const [prepared, setPrepared] = useState<readonly ToldContent[] | null>(null);
  const prepare = (said: Said, { by = "", also }: More): readonly ToldContent[] => {
    const now = isoWithOffset(new Date());
    const who = by === "" ? {} : { by };
    // Nothing here comes from pycore, so that nothing waits for it: not even for its version.
    const versions = { build: __BUILD_ID__, pycore: "" };
    const place = { machine, measured_at: now, wall: now, ...who, versions };
    const first = { ...said, ...place, id: draft.id };
    return also === undefined ? [first] : [first, { ...also, ...place, id: draft.also }];
  };
  const store = async (said: Said, more: More): Promise<void> => {
    setSaving({ kind: "saving" });
    const contents = prepared ?? prepare(said, more);
    setPrepared(contents);
    const ids: string[] = [];
    for (const content of contents) {
      const outcome = await save(content);
      if (outcome.kind === "not_saved") {
        // Pressed again, what is stored already is not stored twice.
        setSaving({ kind: "not_saved", trouble: outcome.trouble });
        return;
      }
      ids.push(outcome.row.id);
    }
    if (more.by !== undefined && more.by !== "") keepName(more.by);
    dropDraft(name);
    replace(...(machine === "" ? ["told"] : ["machines", machine, "told"]), ids[0] ?? "");
  };
  return {
    text: (field) => draft.texts[field] ?? "",
    isTyped: (field) => draft.texts[field] !== undefined,
    change: (field, text, more = {}) => {
      const next = { ...draft, texts: { ...draft.texts, ...more, [field]: text } };
      setDraft(next);
      setPrepared(null);
      writeDraft(name, next);
    },
    saving,
    press: (said, more = {}) => {
      if (saving.kind !== "saving") void store(said, more);
    },
  };
}

// Saving what is said about an entry: prepared once, so that pressing again after a failure is the same one.
import { useState } from "preact/hooks";
import type { CorrectionContent, WithdrawalContent } from "../../core/messages";
import { storedKind, type AmendContent, type AnyEntry } from "../../store/log/entry";
import { save } from "../../store/log/journal";
import { keepName } from "../../store/phone/name";
import { isoWithOffset } from "../../words/times";
import { say } from "../../words/say";
import type { Saving } from "../check/save";
import { useCore } from "../core";
import { replace } from "../route";
import { readVersions } from "../versions";
import type { Content } from "./content";
import { changeDraft, draftOf, endDraft, type Draft } from "./draft";

type Said = Pick<AmendContent, "kind" | "body" | "shown">;

/** Whatever counts now is named, so that two phones that both correct never leave it open. */
function settled({ amended }: AnyEntry): { settles?: string[] } {
  const ids = (amended?.by ?? []).map(({ id }) => id);
  return ids.length === 0 ? {} : { settles: ids };
}

/** The log wants a reason; where nobody gave one, it says so. */
const reasonOf = ({ reason }: Draft): string => reason.trim() || say("amend.no_reason");

export function correctionOf(
  entry: AnyEntry,
  draft: Draft,
  content: Content,
  shown: object | null,
): Said {
  const body: CorrectionContent = {
    corrects: entry.id,
    ...settled(entry),
    reason: reasonOf(draft),
    kind: storedKind(entry.kind) as CorrectionContent["kind"],
    content,
  };
  return { kind: "correction", body, ...(shown === null ? {} : { shown }) };
}

export function withdrawalOf(entry: AnyEntry, reason: string): Said {
  const body: WithdrawalContent = { retracts: entry.id, ...settled(entry), reason };
  return { kind: "withdrawal", body };
}

/** What is withdrawn stands again when its withdrawal is withdrawn. */
export function putBackOf(withdrawal: string): Said {
  const body: WithdrawalContent = { retracts: withdrawal, reason: say("amend.put_back_reason") };
  return { kind: "withdrawal", body };
}

export function useAmending(entry: AnyEntry) {
  const core = useCore();
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const prepare = async (said: Said, draft: Draft): Promise<AmendContent> => {
    const now = isoWithOffset(new Date());
    const by = draft.by.trim();
    return {
      ...said,
      id: draft.id,
      machine: entry.machine,
      measured_at: now,
      wall: now,
      ...(by === "" ? {} : { by }),
      versions: await readVersions(core),
    };
  };
  const store = async (said: Said): Promise<void> => {
    setSaving({ kind: "saving" });
    const draft = draftOf(entry.id).value;
    const content = draft.prepared ?? (await prepare(said, draft));
    changeDraft(entry.id, { prepared: content });
    const outcome = await save(content);
    if (outcome.kind === "not_saved") {
      setSaving({ kind: "not_saved", trouble: outcome.trouble });
      return;
    }
    if (draft.by.trim() !== "") keepName(draft.by.trim());
    replace("log", entry.id, "amended");
    endDraft(entry.id);
  };
  return {
    saving,
    press: (said: Said): void => {
      if (saving.kind !== "saving") void store(said);
    },
  };
}

// The page of a fact of the shop, which is an entry of the log: read, saved, and back.
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import type { ShopSetContent } from "../../core/messages";
import { MainAction } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { newId } from "../../store/log/ids";
import { saveFact } from "../../store/written/shop";
import { NotSaved, saveWord } from "../check/notsaved";
import type { Saving } from "../check/save";
import { back } from "../route";

export interface FactSaving {
  readonly saving: Saving;
  /** Goes back once it is in the log. */
  readonly store: (body: ShopSetContent) => Promise<void>;
}

export function useFact(): FactSaving {
  const [id] = useState(newId);
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const store = async (body: ShopSetContent): Promise<void> => {
    setSaving({ kind: "saving" });
    const outcome = await saveFact(id, body);
    if (outcome.kind === "saved") back();
    else setSaving({ kind: "not_saved", trouble: outcome.trouble });
  };
  return { saving, store };
}

interface FactPageProps {
  readonly title: string;
  /** What is typed, so that another press counts once it differs. */
  readonly about: string;
  readonly saving: Saving;
  readonly onSave: () => void;
  readonly children: ComponentChildren;
}

export function FactPage({ title, about, saving, onSave, children }: FactPageProps) {
  return (
    <Page
      title={title}
      onBack={() => {
        back();
      }}
      action={
        <MainAction
          onPress={() => {
            if (saving.kind !== "saving") onSave();
          }}
          about={about}
          busy={saving.kind === "saving"}
        >
          {saveWord(saving)}
        </MainAction>
      }
    >
      <NotSaved saving={saving} />
      {children}
    </Page>
  );
}

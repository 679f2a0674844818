import { MainAction } from "../../elements/buttons";
import { isKey, say } from "../../words/say";
import type { Saving } from "./save";

/** Said at once and loud: the numbers are not in the log, and they are not lost. */
export function NotSaved({ saving }: { readonly saving: Saving }) {
  if (saving.kind !== "not_saved") return null;
  const key = `store.${saving.trouble}`;
  return (
    <p class="not-saved" role="alert">
      <strong>{say("save.not_saved")}</strong> {isKey(key) ? say(key) : say("store.other")}
    </p>
  );
}

export function saveWord(saving: Saving): string {
  if (saving.kind === "saving") return say("save.saving");
  return saving.kind === "not_saved" ? say("again") : say("save.save");
}

interface SaveActionProps {
  readonly saving: Saving;
  readonly onPress: () => void;
}

/** Save as a page's main action, with what became of it above. */
export function SaveAction({ saving, onPress }: SaveActionProps) {
  return (
    <>
      <NotSaved saving={saving} />
      <MainAction onPress={onPress} busy={saving.kind === "saving"}>
        {saveWord(saving)}
      </MainAction>
    </>
  );
}

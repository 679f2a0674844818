// Reached only when the store has answered and the stored text was read back.
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import type { AnyEntry } from "../../store/log/entry";
import { machineById } from "../../store/log/machines";
import { say } from "../../words/say";
import { address, replace } from "../route";
import { HeldLine } from "../told/stated";
import { entryText } from "./facts";
import { placeName } from "./screen";

export function AmendedScreen({ entry }: { readonly entry: AnyEntry }) {
  const { standing } = entry.amended ?? { standing: "as_written" as const };
  const isKnown = machineById(entry.machine) !== undefined;
  const onward = (): void => {
    replace(...(isKnown ? ["machines", entry.machine] : []));
  };
  return (
    <Page
      title={say("saved.title")}
      place={placeName(entry)}
      onBack={onward}
      action={<MainAction onPress={onward}>{say("tell.done")}</MainAction>}
    >
      <p role="status">{say(`amend.saved_${standing}`)}</p>
      <HeldLine machine={entry.machine} />
      <p class="saved-next">{entryText(entry)}</p>
      <PlaceLink to={address("log", entry.id)}>{say("saved.entry")}</PlaceLink>
    </Page>
  );
}

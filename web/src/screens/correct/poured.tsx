// What was done after a check: the way to what was poured and read again, which may have to be put right too.
import { OtherAction, PlaceLink } from "../../elements/buttons";
import { deedsAfter } from "../../store/log/deeds";
import type { CheckEntry } from "../../store/log/entry";
import { coldOf, wantWhole } from "../../store/log/journal";
import { say } from "../../words/say";
import { address } from "../route";
import { deedWord, entryText } from "./facts";

export function PouredPart({ check }: { readonly check: CheckEntry }) {
  const deeds = deedsAfter(check.id);
  const isPart = deeds.length === 0 && coldOf(check.machine).entries > 0;
  if (deeds.length === 0 && !isPart) return null;
  return (
    <section>
      <h2>{say("amend.done_after")}</h2>
      {isPart ? <OtherAction onPress={wantWhole}>{say("amend.look_for")}</OtherAction> : null}
      {deeds.map((deed) => (
        <PlaceLink key={deed.id} to={address("log", deed.id)}>
          {say("amend.deed", { what: deedWord(deed), text: entryText(deed) })}
        </PlaceLink>
      ))}
    </section>
  );
}

// What was done after a check: the way to what was poured and read again, which may have to be put right too.
import { OtherAction, PlaceLink } from "../../elements/buttons";
import type { CheckEntry, DeedEntry } from "../../store/log/entry";
import { coldOf, recentDeedsTold, wantWhole } from "../../store/log/journal";
import { say } from "../../words/say";
import { address } from "../route";
import { deedWord, entryText } from "./facts";

function deedsOf(check: CheckEntry, all: readonly DeedEntry[]): readonly DeedEntry[] {
  const plans = all.filter((deed) => deed.kind === "plan" && deed.body.check === check.id);
  const ids = new Set(plans.map(({ id }) => id));
  const pours = all.filter((deed) => deed.kind === "pour" && ids.has(deed.body.plan));
  const poured = new Set(pours.map(({ id }) => id));
  const again = all.filter((deed) => deed.kind === "recheck" && poured.has(deed.body.of));
  return [...pours, ...again];
}

export function PouredPart({ check }: { readonly check: CheckEntry }) {
  const deeds = deedsOf(check, recentDeedsTold.value);
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

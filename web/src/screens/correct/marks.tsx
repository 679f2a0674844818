// An entry that others have said something about: the new value first, the old one struck, who and when.
import { OtherAction, PlaceLink } from "../../elements/buttons";
import type { Amendment } from "../../store/log/amend";
import type { Amended, AnyEntry } from "../../store/log/entry";
import { say } from "../../words/say";
import { writeMoment } from "../../words/times";
import { NotSaved } from "../check/notsaved";
import { address } from "../route";
import { OldAndNew } from "./after";
import { contentOf } from "./content";
import { fieldsOf, isRevocable } from "./fields";
import { outcomePairs, type Pair } from "./outcome";
import { putBackOf, useAmending } from "./saving";
import { changesOf } from "./written";

function whoWords({ by, said_at: at, reason }: Amendment): string {
  const time = writeMoment(at);
  return by === ""
    ? say("amend.said", { time, reason })
    : say("amend.said_by", { time, reason, by });
}

/** The recipe below is the one that follows: what was shown at the sump stands here beside it. */
function followingOf({ was }: Amended, { shown }: Amendment): readonly Pair[] {
  const before = "shown" in was ? was.shown : null;
  if (shown === null || !("assessment" in shown)) return [];
  const way = "way" in was ? was.way : undefined;
  return outcomePairs(before, shown, way).filter((pair) => pair.was !== pair.now);
}

function pairsOf(entry: AnyEntry, { was }: Amended, { content }: Amendment) {
  if (content === null) return [];
  const before = contentOf(was);
  // A correction may hold a field that the first entry did not have.
  const known = [fieldsOf(was as AnyEntry, before), fieldsOf(entry, content)].flat();
  const fields = [...new Map(known.map((field) => [field.name, field])).values()];
  return changesOf(fields, before, content).map(({ field, was: old, now }) => ({
    label: field.label,
    was: old,
    now,
  }));
}

function One({
  entry,
  amended,
  amendment,
}: { readonly entry: AnyEntry } & {
  readonly amended: Amended;
  readonly amendment: Amendment;
}) {
  return (
    <>
      {amendment.kind === "withdrawal" ? (
        <p>{say("amend.is_taken_back")}</p>
      ) : (
        <OldAndNew
          pairs={[...pairsOf(entry, amended, amendment), ...followingOf(amended, amendment)]}
        />
      )}
      <p class="note">{whoWords(amendment)}</p>
    </>
  );
}

function PutBack({ entry, withdrawal }: { readonly entry: AnyEntry; readonly withdrawal: string }) {
  const { saving, press } = useAmending(entry);
  return (
    <>
      <NotSaved saving={saving} />
      <OtherAction
        onPress={() => {
          press(putBackOf(withdrawal));
        }}
      >
        {say("amend.put_back")}
      </OtherAction>
    </>
  );
}

/** Stands above everything else on the entry's page. */
export function AmendedPart({ entry }: { readonly entry: AnyEntry }) {
  const { amended } = entry;
  if (amended === undefined) return null;
  const { standing, by, said } = amended;
  const [first] = by;
  // What was taken back had been corrected before: its old words are told too.
  const told = said === undefined || by.includes(said) ? by : [...by, said];
  return (
    <section class="stated amended">
      <h2>{say(`amend.is_${standing}`)}</h2>
      {standing === "conflict" ? <p>{say("amend.conflict_text")}</p> : null}
      {standing === "withdrawn" ? <p>{say("amend.withdrawn_text")}</p> : null}
      {told.map((amendment) => (
        <One key={amendment.id} entry={entry} amended={amended} amendment={amendment} />
      ))}
      {standing === "withdrawn" && first !== undefined && by.length === 1 ? (
        <PutBack entry={entry} withdrawal={first.id} />
      ) : null}
    </section>
  );
}

/** The ways to put an entry right; a set-up is changed where it is made. */
export function AmendLinks({ entry }: { readonly entry: AnyEntry }) {
  if (!isRevocable(entry) || entry.amended?.standing === "withdrawn") return null;
  const canCorrect = fieldsOf(entry, contentOf(entry)).length > 0;
  return (
    <div class="places">
      {canCorrect ? (
        <PlaceLink to={address("log", entry.id, "correct")}>{say("amend.correct")}</PlaceLink>
      ) : null}
      <PlaceLink to={address("log", entry.id, "take-back")}>{say("amend.take_back")}</PlaceLink>
    </div>
  );
}

// What is not fed any more: who is asked, the tag that keeps others from it, and the clean-out. And whoever
// went on against the advice reads it once more above the recipe.
import { PlaceLink } from "../../../elements/buttons";
import { isLooked, lookOf } from "../../../store/underway/looks";
import { say } from "../../../words/say";
import { who, WhoLink } from "../../mishap/screen";
import { address } from "../../route";

export function DeadWays({ machine }: { readonly machine: string }) {
  return (
    <>
      <p>{say("mishap.who", { who: who() })}</p>
      <div class="places">
        <PlaceLink to={address("machines", machine, "tell", "hold")}>{say("tell.hold")}</PlaceLink>
        <PlaceLink to={address("machines", machine, "clean-out")}>{say("clean.title")}</PlaceLink>
        <WhoLink />
      </div>
    </>
  );
}

export function DespiteLine({ machine }: { readonly machine: string }) {
  const { chosen, advice } = lookOf(machine).value;
  if (!isLooked(machine) || chosen !== "all_the_same" || advice === null) return null;
  return (
    <p class="look-despite">
      {say("look.despite", { decision: say(`look.decision.${advice.decision}`) })}
    </p>
  );
}

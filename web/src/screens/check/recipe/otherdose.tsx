// The recipe for the other of two strengths that disagree: it needs more concentrate, so it is only shown.
import { secondLook } from "../../../core/secondlook";
import type { Disagreement } from "../../../core/messages";
import { PlaceLink } from "../../../elements/buttons";
import { write } from "../../../words/numbers";
import { say } from "../../../words/say";
import { address } from "../../route";
import { otherStrength } from "../reading/apart";
import { CheckFrame } from "../checkframe";
import { isEmpty, recipeOf } from "./chosen";
import { Disagree } from "./disagree";
import { NothingView, RecipeView } from "./recipeview";
import type { CheckProps } from "../steps";

export function OtherDose({ props, apart }: { props: CheckProps; apart: Disagreement }) {
  const { machine } = props;
  const { other } = apart;
  const now = otherStrength(apart);
  const recipe = recipeOf(other);
  if (recipe === null) return null;
  const look = secondLook(other.shown, recipe);
  if (!look.agrees)
    return (
      <CheckFrame props={props} title={say("second.title")}>
        <Disagree recipe={recipe} look={look} />
      </CheckFrame>
    );
  return (
    <CheckFrame props={props} title={say("second.other_title")}>
      <p class="example">{say("second.other_lead", { strength: write(now) })}</p>
      {isEmpty(recipe) ? (
        <NothingView result={other} recipe={recipe} now={now} />
      ) : (
        <RecipeView result={other} recipe={recipe} machine={machine.body.machine} now={now} />
      )}
      <PlaceLink to={address("machines", machine.machine, "recipe")}>
        {say("second.back_to_smaller")}
      </PlaceLink>
    </CheckFrame>
  );
}

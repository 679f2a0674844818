// A recipe that came back: the main one, the best that can be reached, or another way, each at its own
// place. Before any of them is shown its digits are worked through a second time.
import type { ComponentChildren } from "preact";
import { useEffect } from "preact/hooks";
import type { PlanCheckResult } from "../../../core/messages";
import { secondLook } from "../../../core/secondlook";
import { OtherAction, PlaceLink } from "../../../elements/buttons";
import { wayTitle } from "../../../words/codes";
import { say } from "../../../words/say";
import { isCase } from "../../learn/choose";
import { address, go, replace } from "../../route";
import { Apart } from "../reading/apart";
import { CannotView } from "./cannot";
import { CheckFrame, TryAgain } from "../checkframe";
import { isEmpty, recipeOf, type Recipe } from "./chosen";
import { Disagree } from "./disagree";
import { SaveAction } from "../notsaved";
import { OtherDose } from "./otherdose";
import { NothingView, RecipeView } from "./recipeview";
import { useSaving } from "../save";
import { ExplainFirst } from "../since";
import type { CheckProps } from "../steps";
import { ShortOfConcentrate } from "../stock";
import { Ways } from "./ways";
import { WayView } from "./wayview";

interface ReadyProps {
  readonly props: CheckProps;
  readonly result: PlanCheckResult;
}

interface ChosenProps extends ReadyProps {
  readonly recipe: Recipe;
}

function Disagreed({ props, result, recipe }: ChosenProps) {
  const look = secondLook(result.shown, recipe);
  return (
    <CheckFrame props={props} title={say("second.title")} action={<TryAgain />}>
      <Disagree recipe={recipe} look={look} />
    </CheckFrame>
  );
}

/** Saves the check with the way that stands on the page; `way` is its place among the other ways. */
function SaveRecipe({ props, result, way }: ReadyProps & { readonly way?: number }) {
  const { saving, press } = useSaving(props.machine, props.walk, result, way);
  return <SaveAction saving={saving} onPress={press} />;
}

function toOther({ machine }: CheckProps): string {
  return address("machines", machine.machine, "recipe", "other");
}

/** All six cases beside each other, this one outlined. */
function WhichWay({ result }: Pick<ReadyProps, "result">) {
  const { case: found } = result.plan;
  return isCase(found) ? (
    <PlaceLink to={address("learn", "choose", found)}>{say("learn.choose.link")}</PlaceLink>
  ) : null;
}

function Best({ props, result, recipe }: ChosenProps) {
  const isNothing = isEmpty(recipe);
  const title = isNothing ? say("nothing.title") : say("recipe.title");
  const action = <SaveRecipe props={props} result={result} />;
  return (
    <CheckFrame props={props} title={title} action={action}>
      <ExplainFirst {...props} machine={props.machine.machine} />
      <Apart result={result} toOther={toOther(props)} />
      {isNothing ? (
        <NothingView result={result} recipe={recipe}>
          <Ways result={result} machine={props.machine.machine} />
          <WhichWay result={result} />
          {props.walk.stock === "" ? null : <ShortOfConcentrate {...props} />}
        </NothingView>
      ) : (
        <RecipeView result={result} recipe={recipe} machine={props.machine.body.machine}>
          <Ways result={result} machine={props.machine.machine} />
          <WhichWay result={result} />
          <ShortOfConcentrate {...props} />
        </RecipeView>
      )}
    </CheckFrame>
  );
}

function Cannot({ props, result, recipe }: ChosenProps) {
  const id = props.machine.machine;
  return (
    <CheckFrame props={props} title={say("cannot.title")}>
      <ExplainFirst {...props} machine={props.machine.machine} />
      <Apart result={result} toOther={toOther(props)} />
      <CannotView result={result} recipe={recipe}>
        <Ways result={result} machine={id} />
        <WhichWay result={result} />
        {props.walk.stock === "" ? null : <ShortOfConcentrate {...props} />}
        <div class="two-ways">
          <OtherAction
            onPress={() => {
              go("machines", id, "recipe", "best");
            }}
          >
            {isEmpty(recipe) ? say("cannot.leave") : say("cannot.best")}
          </OtherAction>
          <OtherAction
            onPress={() => {
              go("machines", id, "target", "change");
            }}
          >
            {say("cannot.target")}
          </OtherAction>
        </div>
      </CannotView>
    </CheckFrame>
  );
}

function Way({ props, result, recipe, way }: ChosenProps & { readonly way: number }) {
  const action = <SaveRecipe props={props} result={result} way={way} />;
  return (
    <CheckFrame props={props} title={wayTitle(recipe.why ?? "")} action={action}>
      <Apart result={result} />
      <WayView result={result} recipe={recipe} machine={props.machine.body.machine} />
    </CheckFrame>
  );
}

/** An address of a way that these answers do not have leads to the recipe that they have. */
function ToMain({ props }: { readonly props: CheckProps }): ComponentChildren {
  const id = props.machine.machine;
  useEffect(() => {
    replace("machines", id, "recipe");
  }, [id]);
  return null;
}

/** "way/2" names the second of the other ways. */
function wayOf([kind, number]: readonly string[]): number | undefined {
  return kind === "way" ? Number(number) - 1 : undefined;
}

export function Ready({ props, result }: ReadyProps) {
  if (props.rest[0] === "other") {
    const apart = result.disagreement;
    return apart === undefined ? (
      <ToMain props={props} />
    ) : (
      <OtherDose props={props} apart={apart} />
    );
  }
  const way = wayOf(props.rest);
  const recipe = recipeOf(result, way);
  if (recipe === null) return <ToMain props={props} />;
  if (!secondLook(result.shown, recipe).agrees)
    return <Disagreed props={props} result={result} recipe={recipe} />;
  if (way !== undefined) return <Way props={props} result={result} recipe={recipe} way={way} />;
  const isCannot = recipe.verdict === "out_of_band" && props.rest[0] !== "best";
  return isCannot ? (
    <Cannot props={props} result={result} recipe={recipe} />
  ) : (
    <Best props={props} result={result} recipe={recipe} />
  );
}

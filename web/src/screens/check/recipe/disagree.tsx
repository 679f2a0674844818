// A recipe whose own amounts do not give what it promises is not shown: only the two numbers are.
import type { SecondLook } from "../../../core/secondlook";
import { StateMark } from "../../../elements/statemark";
import { writeDecimal, withUnit, write } from "../../../words/numbers";
import { say } from "../../../words/say";
import type { Recipe } from "./chosen";

export function Disagree({ recipe, look }: { readonly recipe: Recipe; readonly look: SecondLook }) {
  const promised = recipe.levelStrength ?? recipe.strength;
  const { decimals } = promised;
  const found = Number.isFinite(look.found_pct)
    ? withUnit(writeDecimal(look.found_pct, decimals, decimals + 1), "%")
    : say("second.nothing");
  return (
    <section class="plain-page" role="alert">
      <StateMark state="stop" />
      <p class="plain-lead">{say("second.text", { promised: write(promised), found })}</p>
      <p>{say("second.stop")}</p>
    </section>
  );
}

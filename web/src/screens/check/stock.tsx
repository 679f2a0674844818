// How much concentrate is at hand. Asked only of who says that there is little; empty means enough.
import type { Unit } from "../../core/messages";
import { PlaceLink, SideAction } from "../../elements/buttons";
import { Keypad } from "../../elements/fields/keypad";
import { ToolDrawing } from "../../elements/drawings/tools";
import { unitSign } from "../../words/numbers";
import { say } from "../../words/say";
import { useCore } from "../core";
import { checkOf, useGate } from "../gate";
import { address } from "../route";
import { AskNumber, NOTHING_WRONG } from "./asknumber";
import type { CheckProps } from "./steps";

/** The way here from a recipe: quiet, since most shops have a drum. */
export function ShortOfConcentrate({ machine, walk }: CheckProps) {
  const word =
    walk.stock.trim() === ""
      ? say("stock.ask")
      : say("answers.change_this", { field: say("answers.stock") });
  return <PlaceLink to={address("machines", machine.machine, "stock", "change")}>{word}</PlaceLink>;
}

function useStock({ walk, change, next }: CheckProps, unit: Unit) {
  const core = useCore();
  const text = walk.stock.trim();
  return useGate({
    plain: [],
    look: () =>
      text === ""
        ? Promise.resolve(NOTHING_WRONG)
        : core
            .ask("read_quantity", { text, quantity: "concentrate_at_hand_l", unit }, "stock")
            .then(checkOf),
    kept: walk.kept,
    onKept: (kept) => {
      change({ kept });
    },
    onPass: next,
    about: text + unit,
  });
}

/**
 * With digits in the field: that there is enough after all. Without: another unit, which is offered
 * only then, so that digits are never read in a unit that they were not typed in.
 */
function Side({ machine, walk, change, next }: CheckProps) {
  if (walk.stock !== "") {
    const enough = (): void => {
      change({ stock: "", stockUnit: "" });
      next();
    };
    return <SideAction onPress={enough}>{say("stock.enough")}</SideAction>;
  }
  const { pail, jug } = machine.body.machine.units;
  const other = (walk.stockUnit === "" ? pail : walk.stockUnit) === pail ? jug : pail;
  if (pail === jug) return null;
  const useOther = (): void => {
    change({ stockUnit: other });
  };
  return (
    <SideAction onPress={useOther}>{say("stock.in_unit", { unit: unitSign(other) })}</SideAction>
  );
}

export function StockScreen(props: CheckProps) {
  const { machine, walk, change } = props;
  const unit = walk.stockUnit === "" ? machine.body.machine.units.pail : walk.stockUnit;
  const gate = useStock(props, unit);
  const onText = (stock: string): void => {
    change({ stock, stockUnit: unit });
  };
  return (
    <AskNumber
      {...props}
      title={say("stock.title")}
      hint={say("stock.hint")}
      why={say("stock.why")}
      field={say("field.stock")}
      unit={unit}
      text={walk.stock}
      onText={onText}
      gate={gate}
      side={<Side {...props} />}
      drawing={<ToolDrawing tool="drum" />}
      keys={<Keypad text={walk.stock} sign="decimal" onText={onText} />}
    />
  );
}

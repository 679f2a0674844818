// How much concentrate is at hand. Asked only of who says that there is little; empty means enough.
import type { Unit } from "../../core/messages";
import { PlaceLink, SideAction } from "../../elements/buttons";
import { Keypad } from "../../elements/keypad";
import { ToolDrawing } from "../../elements/tools";
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

/** Other digits belong to another unit: they go when the unit changes, and are never read anew. */
function OtherUnit({ unit, onUnit }: { unit: Unit; onUnit: (unit: Unit) => void }) {
  return (
    <button
      type="button"
      class="other-action"
      onClick={() => {
        onUnit(unit);
      }}
    >
      {say("stock.in_unit", { unit: unitSign(unit) })}
    </button>
  );
}

export function StockScreen(props: CheckProps) {
  const { machine, walk, change, next } = props;
  const { pail, jug } = machine.body.machine.units;
  const unit = walk.stockUnit === "" ? pail : walk.stockUnit;
  const gate = useStock(props, unit);
  const onText = (stock: string): void => {
    change({ stock, stockUnit: unit });
  };
  const enough = (): void => {
    change({ stock: "", stockUnit: "" });
    next();
  };
  const other = unit === pail ? jug : pail;
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
      side={
        walk.stock === "" ? undefined : (
          <SideAction onPress={enough}>{say("stock.enough")}</SideAction>
        )
      }
      drawing={<ToolDrawing tool="drum" />}
      below={
        other === unit ? undefined : (
          <OtherUnit
            unit={other}
            onUnit={(stockUnit) => {
              change({ stock: "", stockUnit });
            }}
          />
        )
      }
      keys={<Keypad text={walk.stock} sign="decimal" onText={onText} />}
    />
  );
}

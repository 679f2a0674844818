// The boxes of a stepped tank: height of the floor, length and width of each, the deepest first.
import { OtherAction } from "../../../elements/buttons";
import { Cell } from "../../../elements/fields/cell";
import { Fault } from "../../../elements/fault";
import { unitSign, unitSpoken } from "../../../words/numbers";
import { say } from "../../../words/say";
import type { Faults } from "../frame";
import { BOX_PARTS } from "./sizeparts";
import type { SetupProps } from "../steps";
import { EMPTY_BOX, type Box } from "./tank";

const LEAST = 2;
const MOST = 20;

type BoxProps = Pick<SetupProps, "form" | "change"> & Faults;

function Rows({ form, change, at }: BoxProps) {
  const { boxes, units } = form;
  const unit = unitSpoken(units.stick);
  const put = (row: number, part: Partial<Box>): void => {
    change({ boxes: boxes.map((box, i) => (i === row ? { ...box, ...part } : box)) });
  };
  return (
    <tbody>
      {boxes.map((box, i) => (
        <tr key={i}>
          {BOX_PARTS.map((part) => (
            <td key={part}>
              <Cell
                label={say(`boxes.cell_${part}`, { row: String(i + 1), unit })}
                text={box[part]}
                faulty={at(`sump.steps[${i}].${part}`) !== undefined}
                onText={(text) => {
                  put(i, { [part]: text });
                }}
              />
            </td>
          ))}
        </tr>
      ))}
    </tbody>
  );
}

function RowActions({ form, change }: Pick<BoxProps, "form" | "change">) {
  const { boxes } = form;
  const add = (): void => {
    change({ boxes: [...boxes, EMPTY_BOX] });
  };
  const remove = (): void => {
    change({ boxes: boxes.slice(0, -1) });
  };
  return (
    <div class="row-actions">
      {boxes.length < MOST ? <OtherAction onPress={add}>{say("boxes.add")}</OtherAction> : null}
      {boxes.length > LEAST ? (
        <OtherAction onPress={remove}>{say("boxes.remove")}</OtherAction>
      ) : null}
    </div>
  );
}

export function BoxRows({ form, change, at }: BoxProps) {
  const unit = { unit: unitSign(form.units.stick) };
  const paths = form.boxes.flatMap((_, i) => BOX_PARTS.map((part) => `sump.steps[${i}].${part}`));
  const faults = new Set(paths.map(at).filter((text) => text !== undefined));
  return (
    <section class="points">
      <h2>{say("boxes.title")}</h2>
      {[...faults].map((text) => (
        <Fault key={text}>{text}</Fault>
      ))}
      <table>
        <thead>
          <tr>
            {BOX_PARTS.map((part) => (
              <th key={part} scope="col">
                {say(`boxes.${part}`, unit)}
              </th>
            ))}
          </tr>
        </thead>
        <Rows form={form} change={change} at={at} />
      </table>
      <RowActions form={form} change={change} />
    </section>
  );
}

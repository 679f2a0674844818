// Rows of depth and litres. Empty rows are left out; the deepest row is the rim.
import { OtherAction } from "../../elements/buttons";
import { Fault } from "../../elements/fault";
import { unitSign, unitSpoken } from "../../words/numbers";
import { say } from "../../words/say";
import { isEmptyPoint, type Point } from "./form";
import type { Faults } from "./frame";
import type { SetupProps } from "./steps";

interface CellProps {
  readonly label: string;
  readonly text: string;
  readonly faulty: boolean;
  readonly onText: (text: string) => void;
}

function Cell({ label, text, faulty, onText }: CellProps) {
  return (
    <td>
      <input
        class="text-box text-number"
        type="text"
        inputMode="decimal"
        autoComplete="off"
        value={text}
        aria-label={label}
        aria-invalid={faulty}
        onInput={(event) => {
          onText(event.currentTarget.value);
        }}
      />
    </td>
  );
}

export function PointRows({ form, change, at }: Pick<SetupProps, "form" | "change"> & Faults) {
  const { stick, plate } = form.units;
  const put = (row: number, part: Partial<Point>): void => {
    change({ points: form.points.map((point, i) => (i === row ? { ...point, ...part } : point)) });
  };
  // pycore gets the filled rows only, so its row numbers count those.
  const filled = form.points.map((point, i) =>
    isEmptyPoint(point)
      ? -1
      : form.points.slice(0, i).filter((other) => !isEmptyPoint(other)).length,
  );
  const faultOf = (row: number, part: string): string | undefined =>
    row < 0 ? undefined : at(`sump.points[${row}].${part}`);
  const faults = filled
    .flatMap((row) => ["depth", "volume"].map((part) => faultOf(row, part)))
    .filter((text) => text !== undefined);
  return (
    <section class="points">
      <h2>{say("points.title")}</h2>
      {[...new Set(faults)].map((text) => (
        <Fault key={text}>{text}</Fault>
      ))}
      <table>
        <thead>
          <tr>
            <th scope="col">{say("points.depth", { unit: unitSign(stick) })}</th>
            <th scope="col">{say("points.volume", { unit: unitSign(plate) })}</th>
          </tr>
        </thead>
        <tbody>
          {form.points.map((point, i) => {
            const row = filled[i] ?? -1;
            const name = (part: "points.cell_depth" | "points.cell_volume", unit: string): string =>
              say(part, { row: String(i + 1), unit: unitSpoken(unit) });
            return (
              <tr key={i}>
                <Cell
                  label={name("points.cell_depth", stick)}
                  text={point.depth}
                  faulty={faultOf(row, "depth") !== undefined}
                  onText={(depth) => {
                    put(i, { depth });
                  }}
                />
                <Cell
                  label={name("points.cell_volume", plate)}
                  text={point.volume}
                  faulty={faultOf(row, "volume") !== undefined}
                  onText={(volume) => {
                    put(i, { volume });
                  }}
                />
              </tr>
            );
          })}
        </tbody>
      </table>
      <OtherAction
        onPress={() => {
          change({ points: [...form.points, { depth: "", volume: "" }] });
        }}
      >
        {say("points.add")}
      </OtherAction>
    </section>
  );
}

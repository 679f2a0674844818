// Rows of depth and litres. Empty rows are left out; the deepest row is the rim.
import { OtherAction } from "../../../elements/buttons";
import { Cell } from "../../../elements/fields/cell";
import { Fault } from "../../../elements/fault";
import { unitSign, unitSpoken } from "../../../words/numbers";
import { say } from "../../../words/say";
import { isEmptyPoint, type Form, type Point } from "../form";
import type { Faults } from "../frame";
import type { SetupProps } from "../steps";

const PARTS = ["depth", "volume"] as const;
type Part = (typeof PARTS)[number];

/** pycore gets the filled rows only, so its row numbers count those; null for an empty row. */
function sentRows(points: readonly Point[]): readonly (number | null)[] {
  let sent = -1;
  return points.map((point) => {
    if (isEmptyPoint(point)) return null;
    sent += 1;
    return sent;
  });
}

function cellName(form: Form, part: Part, row: number): string {
  const unit = unitSpoken(part === "depth" ? form.units.stick : form.units.plate);
  return say(`points.cell_${part}`, { row: String(row + 1), unit });
}

type RowsProps = Pick<SetupProps, "form" | "change"> & Faults;

function Rows({ form, change, at }: RowsProps) {
  const sent = sentRows(form.points);
  const put = (row: number, part: Partial<Point>): void => {
    // A row changed by hand is no longer what was poured, and half a table of uncertainties is none.
    const rows = form.points.map(({ depth, volume }) => ({ depth, volume }));
    change({ points: rows.map((point, i) => (i === row ? { ...point, ...part } : point)) });
  };
  return (
    <tbody>
      {form.points.map((point, i) => (
        <tr key={i}>
          {PARTS.map((part) => (
            <td key={part}>
              <Cell
                label={cellName(form, part, i)}
                text={point[part]}
                faulty={at(`sump.points[${sent[i] ?? "none"}].${part}`) !== undefined}
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

export function PointRows({ form, change, at }: RowsProps) {
  const { stick, plate } = form.units;
  const paths = sentRows(form.points).flatMap((row) =>
    row === null ? [] : PARTS.map((part) => `sump.points[${row}].${part}`),
  );
  const faults = new Set(paths.map(at).filter((text) => text !== undefined));
  const add = (): void => {
    const rows = form.points.map(({ depth, volume }) => ({ depth, volume }));
    change({ points: [...rows, { depth: "", volume: "" }] });
  };
  return (
    <section class="points">
      <h2>{say("points.title")}</h2>
      {form.points.some(({ u }) => u !== undefined) ? (
        <p class="note">{say("points.poured")}</p>
      ) : null}
      {[...faults].map((text) => (
        <Fault key={text}>{text}</Fault>
      ))}
      <table>
        <thead>
          <tr>
            <th scope="col">{say("points.depth", { unit: unitSign(stick) })}</th>
            <th scope="col">{say("points.volume", { unit: unitSign(plate) })}</th>
          </tr>
        </thead>
        <Rows form={form} change={change} at={at} />
      </table>
      <OtherAction onPress={add}>{say("points.add")}</OtherAction>
    </section>
  );
}

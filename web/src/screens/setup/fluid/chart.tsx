// A printed chart instead of a factor: pairs of per cent and what that mix reads. Empty rows are left out.
import { OtherAction } from "../../../elements/buttons";
import { Cell } from "../../../elements/fields/cell";
import { Fault } from "../../../elements/fault";
import { unitSign, unitSpoken } from "../../../words/numbers";
import { say } from "../../../words/say";
import type { Form } from "../form";
import type { Asked, Faults } from "../frame";
import { isEmptyPair, type ChartRow } from "./record";
import type { SetupProps } from "../steps";

const PARTS = ["strength", "reading"] as const;
const UNITS = { strength: "%", reading: "Brix" } as const;
const MOST = 20;

/** pycore gets the filled rows only, so its row numbers count those; null for an empty row. */
function sentRows(rows: readonly ChartRow[]): readonly (number | null)[] {
  let sent = -1;
  return rows.map((row) => {
    if (isEmptyPair(row)) return null;
    sent += 1;
    return sent;
  });
}

function pathOf(row: number, part: (typeof PARTS)[number]): string {
  return `fluid.factor_chart[${row}].${part}`;
}

export function askedOfChart({ chart }: Form): readonly Asked[] {
  return chart
    .filter((row) => !isEmptyPair(row))
    .flatMap((row, i) =>
      PARTS.map((part) => ({ path: pathOf(i, part), text: row[part], unit: UNITS[part] })),
    );
}

type RowsProps = Pick<SetupProps, "form" | "change"> & Faults;

function Row({ form, change, at, row, sent }: RowsProps & { row: number; sent: number | null }) {
  const pair = form.chart[row];
  if (pair === undefined) return null;
  const put = (part: Partial<ChartRow>): void => {
    change({ chart: form.chart.map((old, i) => (i === row ? { ...old, ...part } : old)) });
  };
  return (
    <tr>
      {PARTS.map((part) => (
        <td key={part}>
          <Cell
            label={say(`chart.cell_${part}`, {
              row: String(row + 1),
              unit: unitSpoken(UNITS[part]),
            })}
            text={pair[part]}
            faulty={sent !== null && at(pathOf(sent, part)) !== undefined}
            onText={(text) => {
              put({ [part]: text });
            }}
          />
        </td>
      ))}
    </tr>
  );
}

export function ChartRows(props: RowsProps) {
  const { form, change, at } = props;
  const sent = sentRows(form.chart);
  const faults = new Set(
    askedOfChart(form)
      .map(({ path }) => at(path))
      .filter((text) => text !== undefined),
  );
  return (
    <section class="points">
      <h2>{say("chart.title")}</h2>
      {[...faults].map((text) => (
        <Fault key={text}>{text}</Fault>
      ))}
      <table>
        <thead>
          <tr>
            <th scope="col">{say("chart.strength", { unit: unitSign("%") })}</th>
            <th scope="col">{say("chart.reading", { unit: unitSign("Brix") })}</th>
          </tr>
        </thead>
        <tbody>
          {form.chart.map((_, i) => (
            <Row key={i} {...props} row={i} sent={sent[i] ?? null} />
          ))}
        </tbody>
      </table>
      {form.chart.length < MOST ? (
        <OtherAction
          onPress={() => {
            change({ chart: [...form.chart, { strength: "", reading: "" }] });
          }}
        >
          {say("points.add")}
        </OtherAction>
      ) : null}
    </section>
  );
}

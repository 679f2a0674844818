// The numbers of the charts as a table, the newest first.
import { useState } from "preact/hooks";
import type { TrendResult, TrendRow } from "../../core/messages";
import { OtherAction } from "../../elements/buttons";
import { StateShape } from "../../elements/statemark";
import { stateWord } from "../../words/codes";
import { writeNumber } from "../../words/numbers";
import { say, sayCount } from "../../words/say";
import { writeClock, writeTableDay } from "../../words/times";

const ROWS_AT_ONCE = 50;

/** How many rows each day has. */
function timesOfDays(rows: readonly TrendRow[]): ReadonlyMap<string, number> {
  const times = new Map<string, number>();
  for (const { measured_at: at } of rows) {
    const day = writeTableDay(at);
    times.set(day, (times.get(day) ?? 0) + 1);
  }
  return times;
}

interface RowProps {
  readonly row: TrendRow;
  readonly hasPh: boolean;
  /** Another row is of the same day. */
  readonly hasClock: boolean;
}

function Row({ row, hasPh, hasClock }: RowProps) {
  const { shown, state } = row;
  const more = [
    ...(hasClock ? [writeClock(row.measured_at)] : []),
    ...(row.kind === "check" ? [] : [say(`trend.row_${row.kind}`)]),
  ];
  return (
    <tr>
      <th scope="row">
        <a href={`#/log/${row.entry}`}>{writeTableDay(row.measured_at)}</a>
        {more.length === 0 ? null : <span class="note">{more.join(", ")}</span>}
      </th>
      <td>
        {state === undefined ? null : <StateShape state={state} size={18} />}
        {shown.strength === undefined ? "–" : writeNumber(shown.strength)}
        {state === undefined ? null : <span class="only-spoken">{stateWord(state)}</span>}
      </td>
      <td>{shown.volume === undefined ? "–" : writeNumber(shown.volume)}</td>
      <td>
        {row.water_l + row.concentrate_l > 0 ? (
          <>
            {writeNumber(shown.water)}
            <br />
            {say("trend.table_concentrate", { concentrate: writeNumber(shown.concentrate) })}
          </>
        ) : row.added_unknown > 0 ? null : (
          "–"
        )}
        {row.added_unknown === 0 ? null : (
          <>
            <br />
            <span aria-hidden="true">{say("trend.table_not_known")}</span>
            <span class="only-spoken">{sayCount("trend.table_unknown", row.added_unknown)}</span>
          </>
        )}
      </td>
      {hasPh ? <td>{shown.ph === undefined ? "–" : writeNumber(shown.ph)}</td> : null}
    </tr>
  );
}

export function TrendTable({ trend }: { readonly trend: TrendResult }) {
  const [most, setMost] = useState(ROWS_AT_ONCE);
  const older = Math.min(ROWS_AT_ONCE, trend.rows.length - most);
  const hasPh = trend.rows.some(({ ph }) => ph !== undefined);
  const times = timesOfDays(trend.rows);
  const isUnknown = trend.rows.some(({ added_unknown: unknown }) => unknown > 0);
  return (
    <>
      <p class="note">{say("trend.table_note")}</p>
      {isUnknown ? <p class="note">{say("trend.table_unknown_note")}</p> : null}
      <div class="table-frame" tabIndex={0} role="region" aria-label={say("trend.table")}>
        <table class="trend-table">
          <thead>
            <tr>
              <th scope="col">{say("trend.col_day")}</th>
              <th scope="col">{say("trend.col_strength")}</th>
              <th scope="col">{say("trend.col_level", { unit: trend.unit })}</th>
              <th scope="col">{say("trend.col_added", { unit: trend.unit })}</th>
              {hasPh ? <th scope="col">{say("trend.ph")}</th> : null}
            </tr>
          </thead>
          <tbody>
            {[...trend.rows]
              .slice(-most)
              .reverse()
              .map((row) => (
                <Row
                  key={row.entry}
                  row={row}
                  hasPh={hasPh}
                  hasClock={(times.get(writeTableDay(row.measured_at)) ?? 0) > 1}
                />
              ))}
          </tbody>
        </table>
      </div>
      {older <= 0 ? null : (
        <OtherAction
          onPress={() => {
            setMost(most + ROWS_AT_ONCE);
          }}
        >
          {sayCount("log.older", older)}
        </OtherAction>
      )}
    </>
  );
}

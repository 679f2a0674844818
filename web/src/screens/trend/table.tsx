// The numbers of the charts as a table, the newest first.
import { useState } from "preact/hooks";
import type { TrendResult, TrendRow } from "../../core/messages";
import { OtherAction } from "../../elements/buttons";
import { StateShape } from "../../elements/statemark";
import { stateWord } from "../../words/codes";
import { writeNumber } from "../../words/numbers";
import { say, sayCount } from "../../words/say";
import { writeShortDay } from "../../words/times";

const ROWS_AT_ONCE = 50;

function Row({ row, hasPh }: { readonly row: TrendRow; readonly hasPh: boolean }) {
  const { shown, state } = row;
  return (
    <tr>
      <th scope="row">
        <a href={`#/log/${row.entry}`}>{writeShortDay(row.measured_at)}</a>
        {row.kind === "check" ? null : <span class="note">{say(`trend.row_${row.kind}`)}</span>}
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
                <Row key={row.entry} row={row} hasPh={hasPh} />
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

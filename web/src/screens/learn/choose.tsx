// The six cases in one table; opened from a recipe, the case of that check is outlined and named.
import { StateMark } from "../../elements/statemark";
import type { State } from "../../words/codes";
import { say } from "../../words/say";

type Case = "lean_low" | "lean_full" | "in_range_low" | "in_range_full" | "rich_low" | "rich_full";

const ROWS: readonly { readonly state: State; readonly cases: readonly [Case, Case] }[] = [
  { state: "weak", cases: ["lean_low", "lean_full"] },
  { state: "in_range", cases: ["in_range_low", "in_range_full"] },
  { state: "strong", cases: ["rich_low", "rich_full"] },
];

/** Whether a plan's case has a cell: a new charge has none. */
export function isCase(found: string): boolean {
  return ROWS.some(({ cases }) => cases.some((one) => one === found));
}

/** One case: where it is, and the way. */
function Row({ where, one, at }: { where: string; one: Case; at: string | undefined }) {
  const isHere = one === at;
  return (
    <tr>
      <th scope="row">{where}</th>
      <td aria-current={isHere ? "true" : undefined}>
        {isHere ? <b class="choose-here">{say("learn.choose.here")}</b> : null}
        {say(`learn.choose.${one}`)}
      </td>
    </tr>
  );
}

export function ChooseTable({ at }: { readonly at: string | undefined }) {
  return (
    <table class="choose-table">
      {ROWS.map(({ state, cases: [room, full] }) => (
        <tbody key={state}>
          <tr>
            <th colSpan={2} scope="rowgroup">
              <StateMark state={state} />
            </th>
          </tr>
          <Row where={say("learn.choose.room")} one={room} at={at} />
          <Row where={say("learn.choose.full")} one={full} at={at} />
        </tbody>
      ))}
    </table>
  );
}

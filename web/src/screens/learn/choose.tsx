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

export function ChooseTable({ at }: { readonly at: string | undefined }) {
  return (
    <table class="choose-table">
      <thead>
        <tr>
          <td />
          <th scope="col">{say("learn.choose.room")}</th>
          <th scope="col">{say("learn.choose.full")}</th>
        </tr>
      </thead>
      <tbody>
        {ROWS.map(({ state, cases }) => (
          <tr key={state}>
            <th scope="row">
              <StateMark state={state} />
            </th>
            {cases.map((one) => (
              <td key={one} aria-current={one === at ? "true" : undefined}>
                {one === at ? <b class="choose-here">{say("learn.choose.here")}</b> : null}
                {say(`learn.choose.${one}`)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

// The last step by hand: so many buckets of so much water and concentrate, one kind or several.
import { useEffect, useState } from "preact/hooks";
import type { DeskError } from "../../core/messages";
import { MainAction, OtherAction, SideAction } from "../../elements/buttons";
import { Fault } from "../../elements/fault";
import { TextField } from "../../elements/textfield";
import { changePractice, EMPTY_ROW, type OwnRow } from "../../store/practice";
import { errorSentence } from "../../words/errors";
import { say } from "../../words/say";
import { useCore } from "../core";
import { back, go } from "../route";
import { judgeBody, rowsOf } from "./body";
import { Facts, type Known } from "./facts";
import { PracticeFrame } from "./frame";

const PARTS = [
  { part: "count", unit: "1" },
  { part: "water", unit: "L" },
  { part: "concentrate", unit: "mL" },
] as const;
/** More kinds of buckets than pycore takes are no recipe any more. */
const MOST_KINDS = 4;

interface RowProps {
  readonly row: OwnRow;
  readonly at: number;
  readonly error: DeskError | null;
  readonly onRow: (row: OwnRow) => void;
  readonly single: boolean;
}

function Row({ row, at, error, onRow, single }: RowProps) {
  return (
    <fieldset class="practice-row">
      <legend class={single ? "only-spoken" : ""}>
        {say("practice.row", { n: String(at + 1) })}
      </legend>
      {PARTS.map(({ part, unit }) => (
        <TextField
          key={part}
          id={`row-${String(at)}-${part}`}
          label={say(`practice.row_${part}`)}
          unit={unit}
          text={row[part]}
          fault={
            error?.path === `body.answers.pours[${String(at)}].${part}`
              ? errorSentence(error, say(`practice.field_${part}`))
              : undefined
          }
          onText={(text) => {
            onRow({ ...row, [part]: text });
          }}
        />
      ))}
    </fieldset>
  );
}

/** Whether the buckets can be read at all; how good they are is told on the next page. */
function useCompare({ deal, practice }: Known) {
  const core = useCore();
  const [error, setError] = useState<DeskError | null>(null);
  const [isDown, setDown] = useState(false);
  const compare = async (): Promise<void> => {
    const answer = await core.ask("judge_practice", judgeBody(deal, practice, deal.steps), "judge");
    setError(answer.kind === "error" ? answer.error : null);
    setDown(answer.kind === "down");
    // The rows that were left empty are gone, so that a fault names the row that one sees.
    if (answer.kind === "error") changePractice({ rows: rowsOf(practice) });
    if (answer.kind === "ok") go("practice", "result");
  };
  return { error, isDown, compare };
}

function MoreOrLess({ rows }: { readonly rows: readonly OwnRow[] }) {
  return (
    <>
      {rows.length < MOST_KINDS ? (
        <OtherAction
          onPress={() => {
            changePractice({ rows: [...rows, EMPTY_ROW] });
          }}
        >
          {say("practice.row_more")}
        </OtherAction>
      ) : null}
      {rows.length > 1 ? (
        <OtherAction
          onPress={() => {
            changePractice({ rows: rows.slice(0, -1) });
          }}
        >
          {say("practice.row_less")}
        </OtherAction>
      ) : null}
    </>
  );
}

export function PoursScreen({ known }: { readonly known: Known }) {
  const { deal, practice } = known;
  const { rows, shown } = practice;
  useEffect(() => {
    changePractice({ at: "pours", shown: shown.filter((one) => one !== "pours") });
    // Coming back to the buckets takes back that the solution was asked for.
  }, []);
  const { error, isDown, compare } = useCompare(known);
  const showMe = (): void => {
    changePractice({ shown: [...shown, "pours"] });
    go("practice", "result");
  };
  const isElsewhere = error !== null && !error.path.includes(".pours[");
  const count = String(deal.steps.length);
  return (
    <PracticeFrame
      deal={deal}
      title={say("practice.ask.pours")}
      step={say("practice.step", { number: practice.number, n: count, all: count })}
      side={<SideAction onPress={showMe}>{say("practice.show")}</SideAction>}
      onBack={() => {
        back("practice");
      }}
      action={
        <MainAction onPress={() => void compare()} about={JSON.stringify(rows)}>
          {say("practice.to_result")}
        </MainAction>
      }
    >
      <Facts step="pours" known={known} />
      <p class="note">{say("practice.pours_hint")}</p>
      {isElsewhere ? <Fault>{errorSentence(error)}</Fault> : null}
      {isDown ? <Fault>{say("practice.down")}</Fault> : null}
      {rows.map((row, at) => (
        <Row
          key={at}
          row={row}
          at={at}
          error={error}
          single={rows.length === 1}
          onRow={(next) => {
            changePractice({ rows: rows.map((one, i) => (i === at ? next : one)) });
          }}
        />
      ))}
      <MoreOrLess rows={rows} />
    </PracticeFrame>
  );
}

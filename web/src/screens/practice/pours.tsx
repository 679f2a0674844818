// The last step by hand: so many buckets of so much water and concentrate, one kind or several.
import { useEffect, useState } from "preact/hooks";
import type { DeskError } from "../../core/messages";
import { MainAction, OtherAction, SideAction } from "../../elements/buttons";
import { Fault } from "../../elements/fault";
import { Keypad } from "../../elements/fields/keypad";
import { changePractice, EMPTY_ROW, type OwnRow } from "../../store/underway/practice";
import { errorSentence } from "../../words/errors";
import { say } from "../../words/say";
import { Cell, faultId } from "../check/compact/cell";
import { useCore } from "../core";
import { back, go } from "../route";
import { judgeBody, rowsOf } from "./body";
import { Facts, type Known } from "./facts";
import { PracticeFrame } from "./frame";

const PARTS = [
  { part: "count", unit: "1", sign: "whole" },
  { part: "water", unit: "L", sign: "decimal" },
  { part: "concentrate", unit: "mL", sign: "whole" },
] as const;
type Part = (typeof PARTS)[number]["part"];
/** More kinds of buckets than pycore takes are no recipe any more. */
const MOST_KINDS = 4;

interface At {
  readonly row: number;
  readonly part: Part;
}

interface RowProps {
  readonly row: OwnRow;
  readonly at: number;
  readonly error: DeskError | null;
  readonly active: Part | null;
  readonly onRow: (row: OwnRow) => void;
  readonly onActive: (part: Part) => void;
  readonly onEnter: () => void;
  readonly single: boolean;
}

function Row({ row, at, error, active, onRow, onActive, onEnter, single }: RowProps) {
  const wrong = PARTS.find(({ part }) => error?.path === `body.answers.pours[${at}].${part}`)?.part;
  const idOf = (part: Part): string => `row-${String(at)}-${part}`;
  return (
    <fieldset class="practice-row">
      <legend class={single ? "only-spoken" : ""}>
        {say("practice.row", { n: String(at + 1) })}
      </legend>
      {error === null || wrong === undefined ? null : (
        <Fault id={faultId(idOf(wrong))}>
          {errorSentence(error, say(`practice.field_${wrong}`))}
        </Fault>
      )}
      <div class="cells cells-three">
        {PARTS.map(({ part, unit }) => (
          <Cell
            key={part}
            id={idOf(part)}
            name={say(`practice.row_${part}`)}
            unit={unit}
            text={row[part]}
            aside={part === "count" ? null : say("practice.row_each")}
            isActive={part === active}
            isFaulty={part === wrong}
            onText={(text) => {
              onRow({ ...row, [part]: text });
            }}
            onFocus={() => {
              onActive(part);
            }}
            onEnter={onEnter}
          />
        ))}
      </div>
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

interface RowsProps {
  readonly rows: readonly OwnRow[];
  readonly error: DeskError | null;
  readonly onEnter: () => void;
}

/** The buckets, and one set of keys for the field that was touched last. */
function Rows({ rows, error, onEnter }: RowsProps) {
  const [asked, setAsked] = useState<At>({ row: 0, part: "count" });
  const at: At = { ...asked, row: Math.min(asked.row, rows.length - 1) };
  const put = (row: number, next: OwnRow): void => {
    changePractice({ rows: rows.map((one, i) => (i === row ? next : one)) });
  };
  const row = rows[at.row] ?? EMPTY_ROW;
  const sign = PARTS.find(({ part }) => part === at.part)?.sign ?? "whole";
  return (
    <>
      {rows.map((one, i) => (
        <Row
          key={i}
          row={one}
          at={i}
          error={error}
          active={i === at.row ? at.part : null}
          single={rows.length === 1}
          onRow={(next) => {
            put(i, next);
          }}
          onActive={(part) => {
            setAsked({ row: i, part });
          }}
          onEnter={onEnter}
        />
      ))}
      <Keypad
        text={row[at.part]}
        sign={sign}
        onText={(text) => {
          put(at.row, { ...row, [at.part]: text });
        }}
      />
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
      <Rows rows={rows} error={error} onEnter={() => void compare()} />
      <MoreOrLess rows={rows} />
    </PracticeFrame>
  );
}

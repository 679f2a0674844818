// The rows that are typed: dip and reading always, the clean side and the warmth of the glass where this
// machine and instrument ask for them.
import type { AssessSumpResult } from "../../../core/messages";
import { Fault } from "../../../elements/fault";
import { LevelBar } from "../../../elements/drawings/levelbar";
import { StateShape } from "../../../elements/statemark";
import { lastDip, lastReading } from "../../../store/log/deeds";
import {
  dipTyped,
  dipUnit,
  readingUnit,
  warmthUnit,
  type Walk,
} from "../../../store/underway/walk";
import { errorSentence } from "../../../words/errors";
import { write, writeTyped } from "../../../words/numbers";
import { say } from "../../../words/say";
import type { Gate } from "../../gate";
import { dipLabel, dipName, dipSteps, writeDip } from "../dip/level";
import { typedNow } from "../reading/reading";
import { kindOf, type CheckProps } from "../steps";
import { Cell, faultId } from "./cell";
import { PATHS, type Live } from "./live";

export type RowName = keyof typeof PATHS;

export interface Row {
  readonly row: RowName;
  readonly name: string;
  /** The name inside a sentence. */
  readonly field: string;
  readonly unit: string;
  readonly text: string;
  readonly changed: (text: string) => Partial<Walk>;
}

export function rowsOf({ machine, walk }: Pick<CheckProps, "machine" | "walk">): readonly Row[] {
  const typed = machine.body.machine;
  const all: Readonly<Record<RowName, Omit<Row, "row">>> = {
    dip: {
      name: dipLabel(typed),
      field: dipName(typed),
      unit: dipUnit(typed),
      text: walk.dip,
      changed: (dip) => ({ dip, gaugeTo: "" }),
    },
    clean_side: {
      name: say("answers.clean_side"),
      field: say("field.clean_side"),
      unit: typed.units.stick,
      text: walk.cleanSide,
      changed: (cleanSide) => ({ cleanSide }),
    },
    reading: {
      name: walk.diluted === "" ? say("answers.reading") : say("answers.diluted"),
      field: say("field.reading"),
      unit: readingUnit(typed),
      text: walk.reading,
      changed: typedNow,
    },
    warmth: {
      name: say("answers.warmth"),
      field: say("field.temperature"),
      unit: warmthUnit(typed),
      text: walk.temperature,
      changed: (temperature) => ({ temperature }),
    },
  };
  const names: readonly RowName[] = [
    "dip",
    ...(dipSteps(typed).includes("clean_side") ? (["clean_side"] as const) : []),
    "reading",
    ...(kindOf(typed).asksWarmth ? (["warmth"] as const) : []),
  ];
  return names.map((row) => ({ row, ...all[row] }));
}

const last = (value: string | undefined): string =>
  value === undefined ? "" : say("compact.last", { value });

function DipAside({ machine, walk, level }: AsideProps) {
  const volume = level?.level?.shown.volume;
  const before = lastDip(machine.machine);
  if (walk.dip.trim() === "") return <>{last(before && writeDip(before.typed))}</>;
  const between = walk.gaugeTo === "" ? "" : `${writeDip(dipTyped(machine.body.machine, walk))} `;
  return <>{`${between}${volume === undefined ? "" : write(volume)}`}</>;
}

function ReadingAside({ machine, walk, strength }: AsideProps) {
  const found = strength?.strength;
  const before = lastReading(machine.machine);
  if (walk.reading.trim() === "") return <>{last(before && writeTyped(before.typed.shows))}</>;
  const written = found?.shown.strength;
  if (written === undefined) return null;
  return (
    <>
      {found?.state === undefined ? null : <StateShape state={found.state} size={16} />}
      {write(written)}
    </>
  );
}

interface AsideProps extends Pick<CheckProps, "machine" | "walk"> {
  readonly level: AssessSumpResult | null;
  readonly strength: AssessSumpResult | null;
}

interface RowsProps extends Pick<CheckProps, "machine" | "walk" | "change"> {
  readonly live: Live;
  readonly gate: Gate;
  readonly active: RowName;
  readonly onActive: (row: RowName) => void;
  readonly onEnter: (row: RowName) => void;
}

function errorOf(row: RowName, gate: Gate) {
  return gate.errors.find(({ path }) => path.startsWith(PATHS[row]));
}

export const cellId = (row: RowName): string => `cell-${row}`;

/** Under the row that it belongs to, as wide as the page: the sentence of the guided page. */
function RowFaults({ rows, gate }: { readonly rows: readonly Row[]; readonly gate: Gate }) {
  return (
    <>
      {rows.map(({ row, field }) => {
        const error = errorOf(row, gate);
        return error === undefined ? null : (
          <Fault key={row} id={faultId(cellId(row))}>
            {errorSentence(error, field)}
          </Fault>
        );
      })}
    </>
  );
}

export function Rows({ machine, walk, change, live, gate, active, onActive, onEnter }: RowsProps) {
  const rows = rowsOf({ machine, walk });
  const beside = { machine, walk, level: live.level, strength: live.strength };
  const asides: Readonly<Partial<Record<RowName, preact.VNode>>> = {
    dip: <DipAside {...beside} />,
    reading: <ReadingAside {...beside} />,
  };
  return (
    <>
      <div class="cells">
        {rows.map(({ row, name, unit, text, changed }) => (
          <Cell
            key={row}
            id={cellId(row)}
            name={name}
            unit={unit}
            text={text}
            aside={asides[row] ?? null}
            picture={row === "dip" ? <LevelBar section={live.level?.section ?? null} /> : null}
            isActive={row === active}
            isFaulty={errorOf(row, gate) !== undefined}
            onText={(typed) => {
              change(changed(typed));
            }}
            onFocus={() => {
              onActive(row);
            }}
            onEnter={() => {
              onEnter(row);
            }}
          />
        ))}
      </div>
      <RowFaults rows={rows} gate={gate} />
    </>
  );
}

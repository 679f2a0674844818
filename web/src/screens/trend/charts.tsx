// Strength, level, what went in and pH: one small chart each under the other, on one axis of time.
import { useMemo } from "preact/hooks";
import type { ReadMachineResult, TrendResult } from "../../core/messages";
import { Chart } from "../../elements/chart/chart";
import type { Drawn } from "../../elements/chart/drawn";
import { StateShape } from "../../elements/statemark";
import { stateWord } from "../../words/codes";
import { write, writeDecimal } from "../../words/numbers";
import { say } from "../../words/say";
import { writeAxisDay } from "../../words/times";

const DAY_S = 86_400;
/** From here on an axis names months, not days. */
const MONTHS_FROM_D = 200;

type Parts = Pick<Drawn, "marks" | "height"> & Partial<Drawn>;

/** From the first reading to now, and never less than the last day: tomorrow has nothing to show. */
function axisOf({ from_s, now_s }: TrendResult): Pick<Drawn, "from_s" | "to_s"> {
  return { from_s: Math.min(from_s, now_s - DAY_S), to_s: now_s };
}

/** What every chart of this machine has in common. */
function frame(trend: TrendResult, parts: Parts): Drawn {
  const isLong = trend.now_s - trend.from_s > MONTHS_FROM_D * DAY_S;
  const cleaned = trend.rows.filter(({ kind }) => kind === "clean_out").map(({ at_s }) => at_s);
  return {
    bars: [],
    bands: [],
    rests: trend.rests,
    breaks_s: [...cleaned, ...trend.rests.map(({ to_s }) => to_s)],
    full: null,
    last: "",
    margin: 0,
    ...axisOf(trend),
    number: (value) => writeDecimal(value, 0, 1),
    day: (at_s) => writeAxisDay(at_s, isLong),
    ...parts,
  };
}

/** Low and high of the set-up, drawn where nothing has been read in its band yet. */
export type OwnBand = Pick<ReadMachineResult, "low_pct" | "high_pct">;

function bandsOf(trend: TrendResult, own: OwnBand): TrendResult["bands"] {
  const axis = axisOf(trend);
  if (trend.bands.length === 0) return [{ ...axis, ...own }];
  // In a first day it begins with the axis: of the minutes since the first reading nobody would see it.
  const isShort = axis.from_s < trend.from_s;
  return trend.bands.map((band, i) =>
    i === 0 && isShort ? { ...band, from_s: axis.from_s } : band,
  );
}

function strengthOf(trend: TrendResult, own: OwnBand): Drawn {
  const rows = trend.rows.flatMap(({ at_s, strength_pct: strength, state, shown }) =>
    strength === undefined
      ? []
      : [{ at_s, value: strength.value, ...(state === undefined ? {} : { state }), shown }],
  );
  const last = rows.at(-1)?.shown.strength;
  return frame(trend, {
    marks: rows,
    bands: bandsOf(trend, own).map(({ from_s, to_s, low_pct, high_pct }) => ({
      from_s,
      to_s,
      low: low_pct,
      high: high_pct,
    })),
    last: last === undefined ? "" : write(last),
    height: 220,
  });
}

function levelOf(trend: TrendResult): Drawn {
  const rows = trend.rows.flatMap(({ at_s, volume_l: volume, shown }) =>
    volume === undefined ? [] : [{ at_s, value: volume.value, shown }],
  );
  const last = rows.at(-1);
  return frame(trend, {
    marks: rows,
    full: trend.full_volume_l ?? null,
    // As the axis has it, whatever unit the plate has: the table below tells that one.
    last: last === undefined ? "" : write({ value: last.value, decimals: 0, unit: "L" }),
    height: 160,
  });
}

function addedOf(trend: TrendResult): Drawn {
  return frame(trend, {
    marks: [],
    bars: trend.added.map(({ at_s, water_l, concentrate_l }) => ({
      at_s,
      water: water_l,
      concentrate: concentrate_l,
    })),
    height: 130,
  });
}

function acidOf(trend: TrendResult): Drawn {
  const rows = trend.rows.flatMap(({ at_s, ph, shown }) =>
    ph === undefined ? [] : [{ at_s, value: ph, shown }],
  );
  const last = rows.at(-1)?.shown.ph;
  return frame(trend, { marks: rows, last: last === undefined ? "" : write(last), height: 120 });
}

function Key() {
  return (
    <ul class="chart-key" aria-hidden="true">
      {(["strong", "in_range", "weak"] as const).map((state) => (
        <li key={state}>
          <StateShape state={state} size={18} />
          {stateWord(state)}
        </li>
      ))}
      <li>
        <svg viewBox="0 0 28 18" width="28" height="18">
          <path d="M1 9l8-8M1 17L17 1M9 17L25 1M17 17l10-10M25 17l2-2" class="key-hatch" />
          <path d="M1 1h26M1 17h26" class="key-line" />
        </svg>
        {say("trend.band")}
      </li>
    </ul>
  );
}

function AddedKey() {
  return (
    <ul class="chart-key" aria-hidden="true">
      <li>
        <svg viewBox="0 0 12 18" width="12" height="18">
          <path d="M1 1h10v16H1z" class="key-water" />
        </svg>
        {say("trend.water")}
      </li>
      <li>
        <svg viewBox="0 0 12 18" width="12" height="18">
          <path d="M1 1h10v16H1z" class="key-neat" />
        </svg>
        {say("trend.concentrate")}
      </li>
    </ul>
  );
}

/** All with the same margin, so that one moment stands under the other. */
function allOf(trend: TrendResult, own: OwnBand) {
  const parts = {
    strength: strengthOf(trend, own),
    level: levelOf(trend),
    added: addedOf(trend),
    acid: acidOf(trend),
  };
  const margin = Math.max(...Object.values(parts).map(({ last }) => last.length));
  return {
    strength: { ...parts.strength, margin },
    level: { ...parts.level, margin },
    added: { ...parts.added, margin },
    acid: { ...parts.acid, margin },
  };
}

export function Charts({
  trend,
  about,
  own: { low_pct, high_pct },
}: {
  readonly trend: TrendResult;
  readonly about: string;
  readonly own: OwnBand;
}) {
  const all = useMemo(() => allOf(trend, { low_pct, high_pct }), [trend, low_pct, high_pct]);
  return (
    <div class="charts">
      <h2>{say("trend.strength_axis")}</h2>
      <Chart name={say("trend.strength_name", { about })} drawn={all.strength} />
      <Key />
      {all.level.marks.length === 0 ? null : (
        <>
          <h2>{say("trend.level_axis")}</h2>
          <Chart name={say("trend.level_name")} drawn={all.level} />
        </>
      )}
      {all.added.bars.length === 0 ? null : (
        <>
          <h2>{say("trend.added_axis")}</h2>
          <Chart name={say("trend.added_name")} drawn={all.added} />
          <AddedKey />
        </>
      )}
      {all.acid.marks.length === 0 ? null : (
        <>
          <h2>{say("trend.ph")}</h2>
          <Chart name={say("trend.ph_name")} drawn={all.acid} />
        </>
      )}
    </div>
  );
}

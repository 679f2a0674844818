// Instrument, sheet, drum and water of a machine as rows of name and value; only what somebody gave.
import type { MachineTyped } from "../../../core/messages";
import {
  compensationWord,
  factorKnownByWord,
  metalWord,
  showsWord,
  waterWord,
} from "../../../words/codes";
import type { SetupStep } from "../../../words/fields";
import { writeTyped } from "../../../words/numbers";
import { say, sayCount, type Key } from "../../../words/say";
import { writeDay, writeMoment } from "../../../words/times";
import type { Fact } from "../facts";

type Group = readonly [SetupStep, readonly Fact[]];

function row(key: Key, typed: { text: string; unit?: string } | undefined): readonly Fact[] {
  return typed === undefined ? [] : [[say(key), writeTyped(typed)]];
}

function textRow(key: Key, text: string | undefined): readonly Fact[] {
  return text === undefined ? [] : [[say(key), text]];
}

/** A day in words; what is no day stays as it stands. */
function dayRow(key: Key, text: string | undefined): readonly Fact[] {
  if (text === undefined || Number.isNaN(Date.parse(text))) return textRow(key, text);
  return textRow(key, text.includes("T") ? writeMoment(text) : writeDay(text));
}

/** A group that nobody filled in says so, with the way to fill it in beside it. */
function orNothing(key: Key, facts: readonly Fact[]): readonly Fact[] {
  return facts.length > 0 ? facts : [[say(key), say("facts.not_given")]];
}

function instrumentGroups({ instrument }: MachineTyped): readonly Group[] {
  if (instrument === undefined)
    return [["instrument", [[say("facts.instrument"), say("facts.not_given")]]]];
  const { shows, compensation, zero } = instrument;
  const zeroRows = [
    ...row("facts.zero", zero?.shows),
    ...dayRow("facts.zero_on", zero?.on),
    ...row("facts.zero_temperature", zero?.temperature),
    ...textRow("facts.zero_water", zero?.water === undefined ? undefined : waterWord(zero.water)),
  ];
  return [
    [
      "instrument",
      [
        [say("facts.instrument"), showsWord(shows)],
        ...textRow("facts.glass_name", instrument.name),
        ...row("facts.factor_inside", instrument.factor_inside),
        [say("facts.compensation"), compensationWord(compensation ?? "unknown")],
        ...row("facts.resolution", instrument.resolution),
        ...row("facts.highest", instrument.highest),
      ],
    ],
    ["zero", orNothing("facts.zero", zeroRows)],
  ];
}

function metalFacts({ fluid }: MachineTyped): readonly Fact[] {
  const made = fluid.made_for_magnesium;
  const word = made === undefined ? undefined : say(`metals.made_${made ? "yes" : "no"}`);
  return orNothing("facts.metals", [
    ...textRow("facts.metals", fluid.metals?.map(metalWord).join(", ")),
    ...textRow("facts.made_for_magnesium", word),
  ]);
}

function sheetFacts({ fluid }: MachineTyped): readonly Fact[] {
  const limits = fluid.water_limits;
  return orNothing("facts.sheet", [
    ...row("facts.first_fill_ph", fluid.first_fill_ph),
    ...row("facts.density", fluid.density),
    ...row("facts.titration_factor", fluid.titration_factor),
    ...row("facts.split_factor", fluid.split_factor),
    ...row("facts.limits_low", limits?.low),
    ...row("facts.limits_high", limits?.high),
    ...textRow("facts.limits_scheme", limits?.scheme),
  ]);
}

function batchFacts({ fluid }: MachineTyped): readonly Fact[] {
  const months = fluid.shelf_life_months;
  return orNothing("facts.batch", [
    ...textRow("facts.batch", fluid.batch),
    ...dayRow("facts.delivered_on", fluid.delivered_on),
    ...dayRow("facts.opened_on", fluid.opened_on),
    ...textRow(
      "facts.shelf_life",
      months === undefined ? undefined : sayCount("batch.months", months),
    ),
  ]);
}

function waterFacts({ water }: MachineTyped): readonly Fact[] {
  return orNothing("facts.water", [
    ...textRow("facts.water", water === undefined ? undefined : waterWord(water.kind)),
    ...row("facts.hardness", water?.hardness),
    ...row("facts.chloride", water?.chloride),
    ...row("facts.nitrate", water?.nitrate),
  ]);
}

export function recordGroups(machine: MachineTyped): readonly Group[] {
  return [
    ...instrumentGroups(machine),
    ["metals", metalFacts(machine)],
    ["sheet", sheetFacts(machine)],
    ["batch", batchFacts(machine)],
    ["water", waterFacts(machine)],
  ];
}

function chartFacts(chart: NonNullable<MachineTyped["fluid"]["factor_chart"]>): readonly Fact[] {
  return [
    [say("facts.factor"), say("factor.chart")],
    ...chart.map(({ strength, reading }, i): Fact => [
      say("facts.row", { row: String(i + 1) }),
      say("facts.chart_value", { strength: writeTyped(strength), reading: writeTyped(reading) }),
    ]),
  ];
}

function directed({ fluid }: MachineTyped): string {
  if (fluid.factor === undefined) return say("facts.no_factor");
  const factor = writeTyped(fluid.factor);
  const way = fluid.factor_direction;
  return way === undefined ? factor : say(`facts.factor_${way}`, { factor });
}

/** The groups that a set-up can have or not have. */
export function factorGroups(machine: MachineTyped): readonly Group[] {
  const { factor, factor_chart: chart, factor_known_by: by, factor_on: on } = machine.fluid;
  if (factor === undefined && chart === undefined) {
    return [["factor", [[say("facts.factor"), say("facts.no_factor")]]]];
  }
  const known = chart === undefined ? [[say("facts.factor"), directed(machine)] as const] : [];
  const source = by === undefined ? "" : factorKnownByWord(by);
  return [
    ["factor", [...known, ...(chart === undefined ? [] : chartFacts(chart))]],
    ["factor_source", [[say("facts.factor_by"), source], ...dayRow("facts.factor_on", on)]],
  ];
}

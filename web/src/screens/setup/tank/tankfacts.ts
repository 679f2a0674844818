// The shape of a tank and how it is dipped as rows of name and value.
import type { MachineTyped, ObstacleTyped, Typed } from "../../../core/messages";
import { dipFromWord, dippedEndWord, levelTrueWord, readAsWord } from "../../../words/codes";
import { writeTyped } from "../../../words/numbers";
import { say, sayCount } from "../../../words/say";
import type { Fact } from "../facts";
import { typedOrNot } from "../shop/shopfacts";

const typed = (name: string, value: Typed | undefined): readonly Fact[] =>
  value === undefined ? [] : [[name, writeTyped(value)]];

/** A measured table is told by its ends: forty rows say nothing on a phone. */
const LISTED = 12;

function pointFacts({ sump }: MachineTyped): readonly Fact[] {
  const points = sump.points ?? [];
  const last = points.at(-1);
  if (points.length > LISTED && last !== undefined) {
    const blanks = { depth: writeTyped(last.depth), volume: writeTyped(last.volume) };
    return [[say("facts.table"), sayCount("facts.table_rows", points.length, blanks)]];
  }
  return points.map((point, i): Fact => [
    say("facts.row", { row: String(i + 1) }),
    say("facts.row_value", { depth: writeTyped(point.depth), volume: writeTyped(point.volume) }),
  ]);
}

export function sizeFacts(machine: MachineTyped): readonly Fact[] {
  const { sump } = machine;
  const end = sump.dipped_end;
  const boxes = (sump.steps ?? []).map(({ floor, length, width }, i): Fact => [
    say("facts.box", { row: String(i + 1) }),
    say("facts.box_value", {
      floor: writeTyped(floor),
      length: writeTyped(length),
      width: writeTyped(width),
    }),
  ]);
  return [
    [say("facts.full_depth"), writeTyped(sump.full_depth)],
    ...typed(say("facts.full_volume"), sump.full_volume),
    ...typed(say("facts.length"), sump.length),
    ...typed(say("facts.width"), sump.width),
    ...typed(say("size.rise"), sump.rise),
    ...(end === undefined ? [] : [[say("facts.dipped_end"), dippedEndWord(end)] as const]),
    ...boxes,
    ...typed(say("size.diameter"), sump.diameter),
    ...typed(say("size.bottom_diameter"), sump.bottom_diameter),
    ...typed(say("size.top_diameter"), sump.top_diameter),
    ...typed(say("size.height"), sump.height),
    ...pointFacts(machine),
  ];
}

function areaOf({ length, width, diameter, volume }: ObstacleTyped): string {
  if (volume !== undefined) return writeTyped(volume);
  if (diameter !== undefined) return say("facts.thing_round", { diameter: writeTyped(diameter) });
  const blanks = { length: typedOrNot(length), width: typedOrNot(width) };
  return say("facts.thing_sides", blanks);
}

export function thingFacts({ sump }: MachineTyped): readonly Fact[] {
  const things = sump.obstacles ?? [];
  if (things.length === 0) return [[say("facts.things"), say("facts.not_given")]];
  return things.map((thing, i): Fact => {
    const blanks = { from: writeTyped(thing.from_depth), area: areaOf(thing) };
    const { to_depth: to } = thing;
    const value =
      to === undefined
        ? say("facts.thing_up", blanks)
        : say("facts.thing_to", { ...blanks, to: writeTyped(to) });
    return [say("things.row", { row: String(i + 1) }), value];
  });
}

export function hiddenFacts({ sump }: MachineTyped): readonly Fact[] {
  const { hidden, rest } = sump;
  return [
    [say("facts.hidden"), typedOrNot(hidden?.volume)],
    ...typed(say("facts.hidden_u"), hidden?.u),
    ...(hidden === undefined
      ? []
      : [
          [
            say("hidden.drains_back"),
            say(hidden.drains_back ? "drains_back.yes" : "drains_back.no"),
          ] as const,
        ]),
    [say("facts.rest"), typedOrNot(rest)],
  ];
}

export function dippingFacts({ sump }: MachineTyped): readonly Fact[] {
  const {
    read_as = "depth",
    dip_from = "bottom",
    level_true = "stopped",
    wait_min,
    mix_min,
  } = sump;
  const wait =
    wait_min === undefined ? say("facts.not_given") : sayCount("dipping.minutes", wait_min);
  return [
    [say("facts.read_as"), readAsWord(read_as)],
    ...(read_as === "depth" ? [[say("facts.dip_from"), dipFromWord(dip_from)] as const] : []),
    ...typed(say("facts.reference_height"), sump.reference_height),
    ...typed(say("facts.zero_offset"), sump.zero_offset),
    [say("facts.level_true"), levelTrueWord(level_true)],
    ...(level_true === "running" ? [] : [[say("facts.wait"), wait] as const]),
    [
      say("dipping.mix_time"),
      mix_min === undefined ? say("dipping.mix_time_usual") : sayCount("dipping.minutes", mix_min),
    ],
    ...(sump.divided === true ? [[say("facts.divided"), say("divided.yes")] as const] : []),
  ];
}

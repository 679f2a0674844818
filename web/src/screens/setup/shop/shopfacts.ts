// The optional part of a machine as rows of name and value; what nobody gave is said to be so.
import type { MachineTyped } from "../../../core/messages";
import { measuredByWord } from "../../../words/codes";
import { writeTyped } from "../../../words/numbers";
import { say } from "../../../words/say";
import type { Fact } from "../facts";

/** What was typed, or that nothing was. */
export function typedOrNot(typed: { text: string; unit?: string } | undefined): string {
  return typed === undefined ? say("facts.not_given") : writeTyped(typed);
}

export function pailFacts({ pail }: MachineTyped): readonly Fact[] {
  return [
    [say("facts.measure_by"), measuredByWord(pail?.measure_by ?? "jug")],
    [say("facts.first_mark"), typedOrNot(pail?.first_mark)],
    [say("facts.jug_first_mark"), typedOrNot(pail?.jug_first_mark)],
    [say("facts.jug_size"), typedOrNot(pail?.jug_size)],
  ];
}

function ownFluidWord(allowed: boolean | undefined): string {
  if (allowed === undefined) return say("facts.not_given");
  return say(allowed ? "own_fluid.yes" : "own_fluid.no");
}

function unitWord(unit: NonNullable<MachineTyped["ways"]>["unit"]): string {
  if (unit === undefined) return say("has_unit.no");
  return say("facts.unit_range", {
    lowest: writeTyped(unit.lowest),
    highest: writeTyped(unit.highest),
    step: writeTyped(unit.step),
  });
}

export function allowFacts({ ways }: MachineTyped): readonly Fact[] {
  return [
    [say("facts.draw_off"), say(ways?.draw_off === true ? "draw_off.yes" : "draw_off.no")],
    [say("facts.own_fluid"), ownFluidWord(ways?.own_fluid)],
    [say("facts.carry_out"), typedOrNot(ways?.carry_out)],
    [say("facts.most_buckets"), typedOrNot(ways?.most_buckets)],
    [say("facts.heaviest"), typedOrNot(ways?.heaviest)],
    [say("facts.unit"), unitWord(ways?.unit)],
  ];
}

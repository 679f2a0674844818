// How the level of this machine is taken: the words, the unit and the pages of its dip.
import type { DipTyped, MachineTyped } from "../../../core/messages";
import { touchedWord } from "../../../words/codes";
import { writeTyped } from "../../../words/numbers";
import { say, sayCount, type Key } from "../../../words/say";

type Ways = "stick" | "top" | "scale" | "gauge";

const TITLES: Readonly<Record<Ways, Key>> = {
  stick: "dip.title",
  top: "dip.top_title",
  scale: "dip.scale_title",
  gauge: "dip.gauge_title",
};
const NAMES: Readonly<Record<Ways, Key>> = {
  stick: "field.dip",
  top: "field.dip_top",
  scale: "field.dip_scale",
  gauge: "field.dip_gauge",
};
const LABELS: Readonly<Record<Ways, Key>> = {
  stick: "answers.dip",
  top: "answers.dip_top",
  scale: "answers.dip_scale",
  gauge: "answers.dip_gauge",
};

export function wayOf({ sump }: Pick<MachineTyped, "sump">): Ways {
  if (sump.read_as === "volume") return "scale";
  if (sump.read_as === "gauge") return "gauge";
  return sump.dip_from === "top" ? "top" : "stick";
}

/** What the stick stood on matters only where it stands on the floor. */
export function dipSteps(machine: MachineTyped): readonly ("dip" | "clean_side" | "touched")[] {
  const sides = machine.sump.divided === true ? (["clean_side"] as const) : [];
  return wayOf(machine) === "stick" ? ["dip", ...sides, "touched"] : ["dip", ...sides];
}

export const dipTitle = (machine: MachineTyped): string => say(TITLES[wayOf(machine)]);
export const dipName = (machine: MachineTyped): string => say(NAMES[wayOf(machine)]);
export const dipLabel = (machine: MachineTyped): string => say(LABELS[wayOf(machine)]);

/** The pump state in which this machine's level is true, and how long it takes to be. */
export function dipHint({ sump }: MachineTyped): string {
  if (sump.level_true === "running") return say("dip.hint_running");
  const { wait_min: wait } = sump;
  return wait === undefined || wait === 0 ? say("dip.hint") : sayCount("dip.hint_wait", wait);
}

/** A share such as 3/4 has no unit, and a level between two marks is two of them. */
export function writeDip({ depth, gauge_to: to }: Pick<DipTyped, "depth" | "gauge_to">): string {
  const from = writeTyped(depth);
  return to === undefined ? from : say("dip.between", { from, to: writeTyped(to) });
}

/** Both: a corrected floor must be seen also where the level was not at rest. */
function touchedFacts({ how, waited }: DipTyped): readonly [string, string][] {
  const isMoving = waited === false;
  const floor = how === undefined ? say("answers.missing") : touchedWord(how);
  return [
    ...(how === undefined && isMoving ? [] : [[say("answers.touched"), floor] as [string, string]]),
    ...(isMoving ? [[say("answers.at_rest"), touchedWord("moving")] as [string, string]] : []),
  ];
}

/** The dip of an entry as rows of name and value. */
export function dipFacts(machine: MachineTyped, dip: DipTyped): readonly [string, string][] {
  const clean = dip.clean_side;
  return [
    [dipLabel(machine), writeDip(dip)],
    ...(clean === undefined
      ? []
      : [[say("answers.clean_side"), writeTyped(clean)] as [string, string]]),
    ...(dipSteps(machine).includes("touched") ? touchedFacts(dip) : []),
  ];
}

// A machine as rows of name and value, as typed: for the check page and for the log.
import type { MachineTyped } from "../../core/messages";
import { fluidTypeWord, kindWord, knownByWord } from "../../words/codes";
import type { SetupStep } from "../../words/fields";
import { unitSign, writeTyped } from "../../words/numbers";
import { say } from "../../words/say";
import { factorGroups, recordGroups } from "./fluid/recordfacts";
import { allowFacts, pailFacts, typedOrNot } from "./shop/shopfacts";
import { dippingFacts, hiddenFacts, sizeFacts, thingFacts } from "./tank/tankfacts";

export type Fact = readonly [name: string, value: string];
type Group = readonly [SetupStep, readonly Fact[]];

/** The last row of a table is its rim already. */
function rimFacts({ sump }: MachineTyped): readonly Fact[] {
  const never: Fact = [say("facts.never_above"), typedOrNot(sump.never_above_depth)];
  if (sump.kind === "table") return [never];
  return [[say("facts.rim"), typedOrNot(sump.rim_depth)], never];
}

/** The facts of each question, in the order in which they are asked. */
export function factsByStep(machine: MachineTyped): readonly Group[] {
  const { units, target, mixing, bucket, sump, fluid } = machine;
  return [
    ["name", [[say("facts.name"), machine.name]]],
    [
      "units",
      (["plate", "stick", "pail", "jug"] as const).map((tool): Fact => [
        say(`units.${tool}`),
        unitSign(units[tool]),
      ]),
    ],
    ["litres", [[say("facts.kind"), kindWord(sump.kind)]]],
    ["size", sizeFacts(machine)],
    ["source", [[say("facts.known_by"), knownByWord(sump.volume_known_by)]]],
    ["rim", rimFacts(machine)],
    ["fluid", [[say("facts.fluid_type"), fluidTypeWord(fluid.type)]]],
    ["drum", [[say("facts.fluid_name"), fluid.name ?? ""]]],
    ...factorGroups(machine),
    [
      "target",
      (["low", "aim", "high"] as const).map((part): Fact => [
        say(`setup_target.${part}`),
        writeTyped(target[part]),
      ]),
    ],
    [
      "limits",
      (["strong", "weak", "closeness"] as const).map((part): Fact => [
        say(`mixing.${part}`),
        writeTyped(mixing[part]),
      ]),
    ],
    [
      "bucket",
      [
        [say("bucket.usable"), writeTyped(bucket.usable)],
        [say("bucket.water_mark"), writeTyped(bucket.water_mark)],
        [say("bucket.jug_mark"), writeTyped(bucket.jug_mark)],
      ],
    ],
    ["things", thingFacts(machine)],
    ["hidden", hiddenFacts(machine)],
    ["dipping", dippingFacts(machine)],
    ...recordGroups(machine),
    ["pour_here", [[say("facts.pour_here"), machine.pour_here ?? say("facts.not_given")]]],
    ["pail", pailFacts(machine)],
    ["allow", allowFacts(machine)],
  ];
}

export function machineFacts(machine: MachineTyped): readonly Fact[] {
  return factsByStep(machine).flatMap(([, facts]) => facts);
}

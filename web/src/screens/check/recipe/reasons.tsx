// Where a recipe comes from: dip, reading, target, and what limits it.
import type { MachineTyped, PlanCheckResult } from "../../../core/messages";
import { shareSentence } from "../../../words/codes";
import { write, writeTyped } from "../../../words/numbers";
import { say } from "../../../words/say";
import { secondLine } from "../reading/apart";
import { formula } from "../reading/formula";
import type { Recipe } from "./chosen";

/** Why a recipe does not fill up to its mark. */
const LESS_HIGH: ReadonlySet<string> = new Set(["stock_short", "water_short", "not_filled_up"]);

/** Nobody has read a depth on a scale or a gauge. */
const LEVEL_READ = {
  depth: "reason.dip",
  volume: "reason.scale",
  gauge: "reason.gauge",
} as const;

/** The input with the largest share, as pycore gave it: what to measure again in doubt. */
function largestShare(result: PlanCheckResult): string | null {
  const [first] = [...result.plan.shares].sort((a, b) => b.share - a.share);
  return first === undefined || first.share === 0 ? null : first.input;
}

/** To which mark: the full one, or another for this once. */
function roomReason({ assessment, shown }: PlanCheckResult): string {
  const level = assessment.level?.shown;
  const mark = shown.fill_to === undefined ? "" : write(shown.fill_to);
  if (shown.fill_room !== undefined)
    return say("reason.fill", { mark, room: write(shown.fill_room) });
  if (shown.fill_over !== undefined)
    return say("reason.fill_over", { mark, over: write(shown.fill_over) });
  if (level === undefined) return "";
  const full = write(level.full_volume);
  return level.over === undefined
    ? say("reason.room", { room: write(level.room), full })
    : say("reason.over", { over: write(level.over), full });
}

/** Aim and level that the limits above did not allow, beside what became of them. */
function changesOf({ assessment, shown }: PlanCheckResult, recipe: Recipe): readonly string[] {
  const full = assessment.level?.shown.full_volume;
  const [aim, strength] = [write(shown.aim), write(recipe.strength)];
  const [wanted, volume] = [full === undefined ? "" : write(full), write(recipe.volume)];
  const isLower = recipe.cautions.some((code) => LESS_HIGH.has(code));
  // As exactly as the strength is shown: 7.3 is no other number than an aim of 7.25.
  const exact = 0.5 * 10 ** -recipe.strength.decimals + 1e-9;
  const isOff = Math.abs(shown.aim.value - recipe.strength.value) > exact;
  const isNear = recipe.verdict === "on_target";
  return [
    isOff && !isNear ? say("reason.changed", { aim, strength }) : "",
    isOff && isNear && !isLower && recipe.why === null && recipe.buckets > 0
      ? say("reason.near", { aim, strength })
      : "",
    isLower && wanted !== "" && wanted !== volume && shown.fill_to === undefined
      ? say("reason.lower", { wanted, volume })
      : "",
  ];
}

function reasonsOf(
  result: PlanCheckResult,
  machine: MachineTyped,
  recipe: Recipe,
): readonly string[] {
  const { assessment, shown } = result;
  const level = assessment.level?.shown;
  const bucket = {
    usable: writeTyped(machine.bucket.usable),
    water: writeTyped(machine.bucket.water_mark),
    jug: writeTyped(machine.bucket.jug_mark),
  };
  const share = largestShare(result);
  return [
    level === undefined
      ? ""
      : say(LEVEL_READ[machine.sump.read_as ?? "depth"], {
          depth: write(level.depth),
          volume: write(level.volume),
        }),
    assessment.strength === undefined
      ? ""
      : say("reason.reading", { formula: formula(assessment) }),
    secondLine(result) ?? "",
    say("reason.target", {
      aim: write(shown.aim),
      low: write(shown.band_low),
      high: write(shown.band_high),
    }),
    roomReason(result),
    say("reason.bucket", bucket),
    ...changesOf(result, recipe),
    share === null ? "" : shareSentence(share),
  ].filter((line) => line !== "");
}

export function Reasons({
  result,
  machine,
  recipe,
}: {
  readonly result: PlanCheckResult;
  readonly machine: MachineTyped;
  readonly recipe: Recipe;
}) {
  return (
    <section class="reasons">
      <h2>{say("reason.title")}</h2>
      <ul>
        {reasonsOf(result, machine, recipe).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

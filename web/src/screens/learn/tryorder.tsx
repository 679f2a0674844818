// To try on the cards about pouring: water first, and the second reading beside what was expected.
import { Bucket } from "../../elements/drawings/bucket";
import { Eyepiece } from "../../elements/drawings/eyepiece";
import { write } from "../../words/numbers";
import { say } from "../../words/say";
import { useResult } from "../core";
import { Choices, useOneOf } from "./choices";
import { checkAt, litres, MACHINE, pour } from "./sump";

type Step = "empty" | "water" | "concentrate";
const STEPS: readonly [Step, ...Step[]] = ["empty", "water", "concentrate"];

export function TryOrder() {
  const step = useOneOf(STEPS, 1);
  const result = useResult("try_sump", {
    check: checkAt("342", "4.0"),
    changes: [pour("8.5", "1.5")],
  });
  const made = result?.pours[0];
  if (made === undefined) return null;
  const shares = {
    water_share: step.value === "empty" ? 0 : made.water_share,
    concentrate_share: step.value === "concentrate" ? made.concentrate_share : 0,
  };
  return (
    <>
      <div class="panel learn-pail">
        <Bucket pour={shares} />
      </div>
      <Choices
        {...step}
        label={say("learn.order.try")}
        said={say(`learn.order.${step.value}`, {
          water: write(made.water),
          concentrate: write(made.concentrate),
        })}
        onAt={step.setAt}
      />
    </>
  );
}

const READINGS: readonly [string, ...string[]] = ["4.4", "4.8", "5.2", "5.6", "6.0"];
const POURED = [
  { count: 4, kind: "mix" as const, water: litres("8.5"), concentrate: litres("1.5") },
];
const POURED_AT = "2026-11-25T09:45:00+01:00";
const READ_AT = "2026-11-25T10:20:00+01:00";

export function TryAgain() {
  const reading = useOneOf(READINGS, 2);
  const { reading: read } = checkAt("342", reading.value);
  const result = useResult("recheck", {
    check: checkAt("342", "4.0"),
    machine: MACHINE,
    pours: POURED,
    poured_at: POURED_AT,
    reading: read,
    now: READ_AT,
  });
  const { expected, found } = result?.shown ?? {};
  const strength = result?.strength;
  const isThere = expected !== undefined && found !== undefined && strength !== undefined;
  const shown = result?.assessment.strength;
  return (
    <>
      <div class="learn-eye">
        <Eyepiece name={say("learn.again.title")} value={shown?.reading_brix.value ?? null} />
        <p class="learn-said" role="status">
          {isThere
            ? say("learn.again.said", { expected: write(expected), found: write(found) })
            : ""}{" "}
          {isThere ? say(`learn.again.${strength.verdict}`) : ""}
        </p>
      </div>
      <Choices
        {...reading}
        label={say("learn.again.try")}
        said={shown === undefined ? "" : write(shown.shown.reading)}
        onAt={reading.setAt}
      />
    </>
  );
}

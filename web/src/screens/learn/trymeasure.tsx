// To try on the cards about measuring: strength in its band, dip and litres, reading and factor.
import { Band } from "../../elements/drawings/band";
import { Eyepiece } from "../../elements/drawings/eyepiece";
import { SectionDrawing } from "../../elements/drawings/section";
import { StateMark } from "../../elements/statemark";
import { stateWord } from "../../words/codes";
import { write } from "../../words/numbers";
import { say } from "../../words/say";
import { formula } from "../check/reading/formula";
import { dimensionOf } from "../check/dip/dip";
import { useResult } from "../core";
import { Choices, useOneOf } from "./choices";
import { assessAt, MACHINE } from "./sump";

const READINGS: readonly [string, ...string[]] = [
  "2.0",
  "3.0",
  "4.0",
  "4.7",
  "5.3",
  "6.0",
  "7.0",
  "8.0",
];
const DIPS: readonly [string, ...string[]] = [
  "60",
  "110",
  "160",
  "220",
  "280",
  "342",
  "400",
  "440",
];
const MIDDLE = 4;

export function TryStrength() {
  const reading = useOneOf(READINGS, 2);
  const set = useResult("read_machine", { machine: MACHINE });
  const strength = useResult("assess_sump", assessAt("342", reading.value))?.strength;
  const now = strength?.strength_pct;
  const state = strength?.state ?? "none";
  const said = strength?.shown.strength;
  if (set === null) return null;
  const { low, aim, high } = set.shown;
  return (
    <>
      <div class="panel learn-panel">
        <Band
          name={say("learn.strength.title")}
          low={set.low_pct}
          high={set.high_pct}
          aim={set.aim_pct}
          now={now === undefined || state === "none" ? null : { value: now.value, state }}
          words={{
            low: write(low),
            high: write(high),
            aim: say("target.aim", { aim: write(aim) }),
            now: said === undefined ? "" : write(said),
            state: stateWord(state),
          }}
        />
      </div>
      <Choices
        {...reading}
        label={say("learn.strength.try")}
        said={said === undefined ? "" : write(said)}
        onAt={reading.setAt}
      />
    </>
  );
}

export function TryDip() {
  const dip = useOneOf(DIPS, MIDDLE);
  const result = useResult("assess_sump", assessAt(dip.value, "4.0"));
  const shown = result?.level?.shown;
  return (
    <>
      <SectionDrawing
        name={say("learn.dip.title")}
        size="wide"
        stick
        section={result?.section ?? null}
        dimension={shown === undefined ? undefined : dimensionOf(shown.depth)}
      />
      <Choices
        {...dip}
        label={say("learn.dip.try")}
        said={shown === undefined ? "" : write(shown.depth)}
        onAt={dip.setAt}
      />
      <p class="learn-said" role="status">
        {shown === undefined
          ? ""
          : say("learn.dip.said", {
              depth: write(shown.depth),
              volume: write(shown.volume),
              room: write(shown.room),
            })}
      </p>
    </>
  );
}

export function TryFactor() {
  const reading = useOneOf(READINGS, 2);
  const result = useResult("assess_sump", assessAt("342", reading.value));
  const shown = result?.strength?.shown;
  return (
    <>
      <div class="learn-eye">
        <Eyepiece
          name={say("learn.factor.title")}
          value={result?.strength?.reading_brix.value ?? null}
          kind="optical"
        />
        <p class="learn-said" role="status">
          {formula(result)}
          <StateMark state={result?.strength?.state ?? "none"} />
        </p>
      </div>
      <Choices
        {...reading}
        label={say("learn.factor.try")}
        said={shown === undefined ? "" : write(shown.reading)}
        onAt={reading.setAt}
      />
    </>
  );
}

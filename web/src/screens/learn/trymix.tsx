// To try on the cards about mixing: what leaves the sump, per cent of what, and how strong a bucket is.
import { useState } from "preact/hooks";
import type { TriedState } from "../../core/messages";
import { Bucket } from "../../elements/drawings/bucket";
import { OtherAction } from "../../elements/buttons";
import { SectionDrawing } from "../../elements/drawings/section";
import { StateMark } from "../../elements/statemark";
import type { ChangeTyped, PourShown } from "../../core/messages";
import { write } from "../../words/numbers";
import { say } from "../../words/say";
import { useAnswer, useResult } from "../core";
import { Choices, useOneOf } from "./choices";
import { checkAt, litres, pour } from "./sump";

const NOW = checkAt("342", "4.0");

function stateLine({ volume, strength }: TriedState): string {
  return say("learn.state", { volume: write(volume), strength: write(strength) });
}

const CHANGES: readonly {
  readonly key: "heat" | "carry" | "pour";
  readonly change: ChangeTyped;
}[] = [
  { key: "heat", change: { kind: "evaporate", volume: litres("10") } },
  { key: "carry", change: { kind: "carry_out", volume: litres("10") } },
  { key: "pour", change: pour("10", "0") },
];

export function TryEvaporate() {
  const [changes, setChanges] = useState<readonly ChangeTyped[]>([]);
  const answer = useAnswer("try_sump", { check: NOW, changes: [...changes] });
  const last = answer?.kind === "ok" ? answer.result.states.at(-1) : undefined;
  const isStopped = answer?.kind === "error";
  return (
    <>
      <SectionDrawing
        name={say("learn.evaporate.title")}
        section={last?.section ?? null}
        fullWord={say("drawn.full")}
      />
      <p class="learn-said" role="status">
        {isStopped ? say("learn.evaporate.stop") : last === undefined ? "" : stateLine(last)}
        {last === undefined ? null : <StateMark state={last.state} />}
      </p>
      <div class="learn-ways">
        {CHANGES.map(({ key, change }) => (
          <button
            key={key}
            type="button"
            class="other-action"
            disabled={isStopped}
            onClick={() => {
              setChanges([...changes, change]);
            }}
          >
            {say(`learn.evaporate.${key}`)}
          </button>
        ))}
        <OtherAction
          onPress={() => {
            setChanges([]);
          }}
        >
          {say("learn.evaporate.again")}
        </OtherAction>
      </div>
    </>
  );
}

/** Litres of water and of concentrate. */
type Amounts = readonly [water: string, concentrate: string];

interface Parts {
  readonly beside: Amounts;
  readonly inside: Amounts;
}

/** The same concentrate beside all the water, and as part of the whole. */
const PARTS: readonly [Parts, ...Parts[]] = [
  { beside: ["10", "0.5"], inside: ["9.5", "0.5"] },
  { beside: ["10", "1"], inside: ["9", "1"] },
  { beside: ["10", "1.5"], inside: ["8.5", "1.5"] },
  { beside: ["10", "2"], inside: ["8", "2"] },
];

function Mixed({ title, pour: made, said }: MixedProps) {
  if (made === undefined) return <figure class="learn-bucket" />;
  const { water, concentrate, strength } = made;
  return (
    <figure class="learn-bucket">
      <div class="panel">
        <Bucket pour={made} />
      </div>
      <figcaption>
        <b>{title}</b>
        <span>
          {say(said, {
            water: write(water),
            concentrate: write(concentrate),
            strength: write(strength),
          })}
        </span>
      </figcaption>
    </figure>
  );
}

interface MixedProps {
  readonly title: string;
  readonly pour: PourShown | undefined;
  readonly said: "learn.percent.of_water" | "learn.percent.of_mix";
}

export function TryPercent() {
  const part = useOneOf(PARTS, 1);
  const { beside, inside } = part.value;
  const changes = [pour(...beside), pour(...inside)];
  const result = useResult("try_sump", { check: NOW, changes });
  const concentrate = result?.pours[1]?.concentrate;
  return (
    <>
      <div class="learn-two">
        <Mixed
          title={say("learn.percent.wrong")}
          pour={result?.pours[0]}
          said="learn.percent.of_water"
        />
        <Mixed
          title={say("learn.percent.right")}
          pour={result?.pours[1]}
          said="learn.percent.of_mix"
        />
      </div>
      <Choices
        {...part}
        label={say("learn.percent.try")}
        said={concentrate === undefined ? "" : write(concentrate)}
        onAt={part.setAt}
      />
    </>
  );
}

/** Water and concentrate of one of four buckets, the usual target among them. */
const BUCKETS: readonly [Amounts, ...Amounts[]] = [
  ["9.8", "0.2"],
  ["9.5", "0.5"],
  ["9.2", "0.8"],
  ["8.8", "1.2"],
  ["8.4", "1.6"],
  ["8", "2"],
];

export function TryTopUp() {
  const bucket = useOneOf(BUCKETS, 2);
  const result = useResult("try_sump", { check: NOW, changes: [pour(...bucket.value, 4)] });
  const [before, after] = result?.states ?? [];
  const poured = result?.pours[0];
  const isThere = before !== undefined && after !== undefined && poured !== undefined;
  return (
    <>
      <div class="before-after">
        {[before, after].map((state, i) => (
          <figure key={i}>
            <SectionDrawing
              name={i === 0 ? say("recipe.before_drawing") : say("recipe.after_drawing")}
              section={state?.section ?? null}
              size="half"
            />
            <figcaption>
              <b>{i === 0 ? say("recipe.before") : say("recipe.after")}</b>{" "}
              {state === undefined ? "" : stateLine(state)}
            </figcaption>
          </figure>
        ))}
      </div>
      <p class="learn-said" role="status">
        {isThere
          ? say("learn.top_up.said", {
              mix: write(poured.strength),
              before: write(before.strength),
              after: write(after.strength),
            })
          : ""}
        {after === undefined ? null : <StateMark state={after.state} />}
      </p>
      <Choices
        {...bucket}
        label={say("learn.top_up.try")}
        said={poured === undefined ? "" : write(poured.concentrate)}
        onAt={bucket.setAt}
      />
    </>
  );
}

// Changed my mind: what really went in so far, the bucket in the hand asked about, and whether the rest
// comes later.
import { useState } from "preact/hooks";
import { MainAction, OtherAction } from "../../../elements/buttons";
import { Choice } from "../../../elements/fields/choice";
import { Fault } from "../../../elements/fault";
import { Page } from "../../../elements/page";
import type { BucketRow } from "../../../store/written/deed";
import type { Tick } from "../../../store/underway/pouring";
import { say } from "../../../words/say";
import { isoWithOffset, writeMoment } from "../../../words/times";
import { back } from "../../route";
import { NotSaved } from "../notsaved";
import type { Saving } from "../save";
import { useFinish, type Outcome } from "./finish";
import { runMinutes } from "./end";
import { overtakenAt, overtakenWords } from "./overtaken";
import { RowList } from "./rows";
import type { PourProps } from "./screen";
import { isOut, joined, pouredRows, rowOf, ticksAt } from "./steps";

type Open = "nothing" | "first" | "all" | "other";

/** The steps of the bucket that is begun and not poured; empty where none is. */
function openTicks({ steps, pouring }: PourProps): readonly Tick[] {
  const next = steps[pouring.ticks.length];
  if (next === undefined || next.bucket === null) return [];
  return pouring.ticks.filter(({ step }) => steps[step]?.bucket === next.bucket);
}

function openRow(props: PourProps, open: Open): BucketRow | null {
  const step = props.steps[props.pouring.ticks.length];
  if (step?.pour === undefined || step.pour === null || open === "nothing") return null;
  const whole = rowOf(step.pour);
  if (open === "all") return whole;
  if (open === "other") return { count: 1, kind: "unknown", about: true };
  const { water, concentrate } = whole;
  if (water !== undefined) return { count: 1, kind: "water", water };
  return concentrate === undefined
    ? { count: 1, kind: "unknown", about: true }
    : { count: 1, kind: "concentrate", concentrate };
}

function outcomeOf(props: PourProps, open: Open, finished: boolean): Outcome {
  const { recipe, steps, pouring } = props;
  const { ticks, logged } = pouring;
  const row = openRow(props, open);
  const begun = openTicks(props);
  const at = isoWithOffset(new Date());
  const rest = row === null ? [] : ticksAt(steps, ticks.length, { whole: true, at, told: true });
  const kept = ticks.filter((tick) => row !== null || !begun.includes(tick));
  const rows = pouredRows(recipe, steps, ticks, logged);
  const { takeOut } = recipe;
  return {
    rows: joined([...rows, ...(row === null ? [] : [row])]),
    out:
      takeOut !== null && isOut(steps, ticks, logged)
        ? props.pouring.plan.body.draw_off
        : undefined,
    finished,
    ticks: [...kept, ...rest],
    evenly: open !== "other" && open !== "first",
    isIn: row !== null || pouredRows(recipe, steps, ticks, 0).length > 0,
    minutes: runMinutes(recipe),
  };
}

function options(props: PourProps): readonly { value: Open; word: string }[] {
  const pour = props.steps[props.pouring.ticks.length]?.pour;
  const only = pour !== undefined && pour !== null && pour.water.value > 0;
  return [
    { value: "nothing", word: say("stop.nothing") },
    ...(only ? [{ value: "first" as const, word: say("stop.only_water") }] : []),
    { value: "all", word: say("stop.all") },
    { value: "other", word: say("stop.other") },
  ];
}

interface OpenBucketProps {
  readonly props: PourProps;
  readonly open: Open | "";
  readonly isMissing: boolean;
  readonly onChoose: (open: Open) => void;
}

function OpenBucket({ props, open, isMissing, onChoose }: OpenBucketProps) {
  const bucket = (props.steps[props.pouring.ticks.length]?.bucket ?? 0) + 1;
  return (
    <section class="last-check">
      <h2 id="open-bucket">{say("stop.open", { n: String(bucket) })}</h2>
      {isMissing ? <Fault>{say("stop.choose")}</Fault> : null}
      <Choice
        name="open-bucket"
        labelledBy="open-bucket"
        options={options(props)}
        chosen={open}
        onChoose={onChoose}
      />
      <p class="note">{say("stop.mixed_keeps_not")}</p>
    </section>
  );
}

interface ActionsProps {
  readonly saving: Saving;
  /** Whether the rest may still be poured. */
  readonly mayGoOn: boolean;
  readonly about: string;
  readonly press: (finished: boolean) => void;
}

function Actions({ saving, mayGoOn, about, press }: ActionsProps) {
  return (
    <>
      <NotSaved saving={saving} />
      {mayGoOn ? (
        <OtherAction
          onPress={() => {
            press(false);
          }}
        >
          {say("stop.later")}
        </OtherAction>
      ) : null}
      <MainAction
        busy={saving.kind === "saving"}
        about={about}
        onPress={() => {
          press(true);
        }}
      >
        {saving.kind === "saving" ? say("save.saving") : say("stop.that_is_all")}
      </MainAction>
    </>
  );
}

export function StopScreen(props: PourProps) {
  const { machine, pouring } = props;
  const [open, setOpen] = useState<Open | "">("");
  const [isMissing, setMissing] = useState(false);
  const { saving, finish } = useFinish(machine, pouring);
  const isBegun = openTicks(props).length > 0;
  const newer = overtakenAt(machine.machine, props.steps.length);
  const said = open === "" ? "nothing" : open;
  // The rest of the recipe was worked out for this bucket as it was meant to be.
  const isChanged = said === "first" || said === "other";
  const press = (finished: boolean): void => {
    setMissing(isBegun && open === "");
    if (isBegun && open === "") return;
    const outcome = outcomeOf(props, said, finished);
    const last = outcome.ticks.at(-1)?.at ?? pouring.plan.measured_at;
    // What was measured after the last bucket has read it already.
    const isRead = newer !== undefined && Date.parse(last) < Date.parse(newer.measured_at);
    finish(isRead ? { ...outcome, isIn: false } : outcome);
  };
  return (
    <Page
      title={say("stop.title")}
      place={machine.body.machine.name}
      step={say("stop.begun", { time: writeMoment(pouring.plan.measured_at) })}
      onBack={() => {
        back("machines", machine.machine, "pour");
      }}
      action={
        <Actions
          saving={saving}
          mayGoOn={newer === undefined && !isChanged}
          about={open}
          press={press}
        />
      }
    >
      {newer === undefined ? null : <p class="plain-lead">{overtakenWords(newer)}</p>}
      {isBegun ? (
        <OpenBucket
          props={props}
          open={open}
          isMissing={isMissing && open === ""}
          onChoose={setOpen}
        />
      ) : null}
      {isChanged ? <p>{say("stop.changed")}</p> : null}
      <RowList rows={outcomeOf(props, said, true).rows} isPart={pouring.logged > 0} />
    </Page>
  );
}

// Since the last dip: what explains a level that the log does not, and which water went in. Asked before
// anything is added, and only where there is something to ask.
import { useEffect } from "preact/hooks";
import type { LookBackResult } from "../../core/messages";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Choice } from "../../elements/fields/choice";
import { SectionDrawing } from "../../elements/drawings/section";
import { Page } from "../../elements/page";
import { lastDip } from "../../store/log/deeds";
import { assessBody } from "../../store/underway/walk";
import type { LevelSaid, Walk, WaterUsed } from "../../store/underway/walk";
import { levelChangeWord, waterWord } from "../../words/codes";
import { write } from "../../words/numbers";
import { say } from "../../words/say";
import { writeMoment } from "../../words/times";
import { useAnswer } from "../core";
import { MishapLink } from "../mishap/link";
import { address } from "../route";
import { isSinceAsked, isToExplain, isUnexplained, type LevelChange } from "./lookback";
import type { CheckProps } from "./steps";

export const LOST: readonly LevelSaid[] = [
  "evaporated",
  "leak",
  "taken_out",
  "measured_wrong",
  "unknown",
];
export const GAINED: readonly LevelSaid[] = [
  "poured_in",
  "water_getting_in",
  "measured_wrong",
  "unknown",
];
export const WATERS: readonly WaterUsed[] = ["mains", "demineralised", "softened", "unknown"];

type Level = NonNullable<LookBackResult["level"]>;

export function levelWords(level: Level): string {
  if (level.verdict === "as_expected") return say("since.nothing");
  return say(`since.${level.verdict}`, {
    difference: write(level.shown.difference),
    most_lost: write(level.shown.most_lost),
    time: writeMoment(level.since),
  });
}

/** The level now, and dashed the one of the last dip. */
function Levels({ machine, walk }: Pick<CheckProps, "machine" | "walk">) {
  const body = assessBody(machine.body.machine, walk, { dip: true, reading: false });
  const answer = useAnswer("assess_sump", walk.dip.trim() === "" ? null : body);
  const before = lastDip(machine.machine)?.entry.shown.assessment.section ?? null;
  const section = answer?.kind === "ok" ? (answer.result.section ?? null) : null;
  if (section === null || before === null) return null;
  return (
    <SectionDrawing
      name={say("since.drawing")}
      section={section}
      before={before}
      both
      fullWord={say("drawn.full")}
    />
  );
}

function LevelPart({
  level,
  walk,
  change,
}: { level: Level } & Pick<CheckProps, "walk" | "change">) {
  const isLost = level.verdict === "lost";
  const options = isLost ? LOST : GAINED;
  return (
    <>
      <p class="look-never">{say(isLost ? "since.leak_first" : "since.gain_first")}</p>
      <h2 id="since-why">{say(isLost ? "since.why_lost" : "since.why_gained")}</h2>
      <Choice
        name="level-change"
        labelledBy="since-why"
        options={options.map((value) => ({ value, word: levelChangeWord(value) }))}
        chosen={options.includes(walk.levelChange as LevelSaid) ? walk.levelChange : ""}
        onChoose={(levelChange) => {
          change({ levelChange });
        }}
      />
    </>
  );
}

function WaterPart({ walk, change }: Pick<CheckProps, "walk" | "change">) {
  return (
    <>
      <h2 id="since-water">{say("since.water")}</h2>
      <Choice
        name="topped-up"
        labelledBy="since-water"
        options={WATERS.map((value) => ({
          value,
          word: waterWord(value),
          ...(value === "softened" ? { note: say("since.water_note") } : {}),
        }))}
        chosen={walk.toppedUpWith}
        onChoose={(toppedUpWith) => {
          change({ toppedUpWith });
        }}
      />
    </>
  );
}

export function SinceScreen(props: CheckProps) {
  const { machine, walk, change, next, step, onBack } = props;
  const { found, isOpen } = props.since;
  const level = found?.level;
  const isPassed = !isOpen && !isSinceAsked(found) && props.rest.length === 0;
  // An answer that came late and has nothing to ask: the next question takes this one's place.
  useEffect(() => {
    if (isPassed) props.pass();
  }, [isPassed]);
  return (
    <Page
      title={say("since.title")}
      place={machine.body.machine.name}
      step={step}
      onBack={onBack}
      action={
        <MainAction onPress={next} about={`${walk.levelChange} ${walk.toppedUpWith}`}>
          {say("go_on")}
        </MainAction>
      }
    >
      <p role="status">
        {isOpen
          ? say("since.open")
          : level === undefined
            ? say(walk.dip.trim() === "" ? "since.no_dip" : "since.first")
            : levelWords(level)}
      </p>
      <Levels machine={machine} walk={walk} />
      {level !== undefined && isUnexplained(found) ? (
        <LevelPart level={level} walk={walk} change={change} />
      ) : null}
      {found?.topped_up === true ? <WaterPart walk={walk} change={change} /> : null}
      {/* Where the figure is from, below the one sentence that names it. */}
      {level?.verdict === "lost" ? (
        <p class="note">{say(`since.limit_${level.limit_by}`)}</p>
      ) : null}
      <MishapLink machine={machine.machine} />
    </Page>
  );
}

/** Above a recipe, as long as nobody has put the loss or the gain down to something else. */
export function ExplainFirst({
  since,
  walk,
  machine,
}: {
  readonly since: LevelChange;
  readonly walk: Walk;
  readonly machine: string;
}) {
  const level = since.found?.level;
  if (level === undefined || !isToExplain(since.found, walk)) return null;
  const isLost = level.verdict === "lost";
  return (
    <section class="cautions">
      <p>
        <strong>{levelWords(level)}</strong>
      </p>
      <p>{say(isLost ? "since.leak_first" : "since.gain_first")}</p>
      <PlaceLink to={address("machines", machine, "since", "change")}>
        {say(isLost ? "since.why_lost" : "since.why_gained")}
      </PlaceLink>
    </section>
  );
}

// Where it should be. The normal case is one tap: the machine's own aim is chosen already.
import { useState } from "preact/hooks";
import type { AssessSumpBody, DeskError } from "../../core/messages";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Band } from "../../elements/drawings/band";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { Stepper } from "../../elements/fields/stepper";
import { Hint } from "../../elements/why";
import { assessBody, planBody } from "../../store/underway/walk";
import { stateWord } from "../../words/codes";
import { errorSentence } from "../../words/errors";
import { write } from "../../words/numbers";
import { say } from "../../words/say";
import { useCore, useResult } from "../core";
import { address } from "../route";
import { cardLink } from "../learn/link";
import type { CheckProps } from "./steps";

const STEP_PCT = 0.5;

/** The next whole step above or below, so that an aim of 7.25 goes to 7.5 or 7. */
function stepped(aim: number, by: 1 | -1): number {
  const at = aim / STEP_PCT;
  return STEP_PCT * (by > 0 ? Math.floor(at) + 1 : Math.ceil(at) - 1);
}

function bodyWithAim(
  { machine, walk }: Pick<CheckProps, "machine" | "walk">,
  aim: string,
): AssessSumpBody {
  const typed = machine.body.machine;
  const body = assessBody(typed, walk, { dip: false, reading: true });
  return { ...body, target: { ...typed.target, aim: { text: aim, unit: "%" } } };
}

/** The aim is a setting, so the page may step its text; whether it is allowed says pycore. */
function useAim(props: CheckProps) {
  const { machine, walk, change } = props;
  const core = useCore();
  const text = walk.aim === "" ? machine.body.machine.target.aim.text : walk.aim;
  const read = useResult("read_quantity", { text, quantity: "aim_pct", unit: "%" });
  const result = useResult("assess_sump", bodyWithAim(props, text));
  const [refused, setRefused] = useState<DeskError | null>(null);
  const step = (by: 1 | -1): void => {
    if (read === null) return;
    const aim = String(stepped(read.value, by));
    const body = planBody(machine.body.machine, { ...walk, aim });
    void core.ask("plan_check", body, "aim").then((answer) => {
      // A fault elsewhere in the check is shown where it belongs; here only the aim counts.
      const isRefused = answer.kind === "error" && answer.error.path.startsWith("body.aim");
      // Two keys led there: nobody typed it.
      setRefused(isRefused ? { ...answer.error, got: null } : null);
      if (!isRefused && (answer.kind === "ok" || answer.kind === "error")) change({ aim });
    });
  };
  return { read, result, refused, step };
}

interface BandPartProps {
  readonly machine: CheckProps["machine"];
  readonly aim: ReturnType<typeof useAim>;
}

function BandPart({ machine, aim: { read, result } }: BandPartProps) {
  const { shown, low_pct, high_pct } = machine.shown;
  const strength = result?.strength;
  const value = strength?.strength_pct?.value;
  const state = strength?.state;
  const written = strength?.shown.strength;
  const now = value === undefined || state === undefined ? null : { value, state };
  const nowWord = written === undefined ? "" : say("target.now", { strength: write(written) });
  const stateText = state === undefined ? "" : stateWord(state);
  const aimWord = read === null ? "" : say("target.aim", { aim: write(read.read_as) });
  const band = { low: write(shown.low), high: write(shown.high), aim: aimWord };
  const name =
    now === null
      ? say("target.drawing_band", band)
      : say("target.drawing", { ...band, now: nowWord, state: stateText });
  return (
    <div class="panel band-panel">
      <Band
        name={name}
        low={low_pct}
        high={high_pct}
        aim={read?.value ?? machine.shown.aim_pct}
        now={now}
        words={{ ...band, now: nowWord, state: stateText }}
      />
    </div>
  );
}

function Above({ aim: { refused } }: Pick<BandPartProps, "aim">) {
  if (refused !== null) return <Fault id="hint">{errorSentence(refused, say("field.aim"))}</Fault>;
  return (
    <Hint id="hint" hint={say("target.hint")} why={say("target.why")} more={cardLink("strength")} />
  );
}

function AimStepper({ aim: { read, step } }: Pick<BandPartProps, "aim">) {
  const size = write({ value: STEP_PCT, decimals: 1, unit: "%" });
  return (
    <Stepper
      label={say("target.title")}
      said={read === null ? "" : write(read.read_as)}
      large
      less={say("target.less", { size })}
      more={say("target.more", { size })}
      onStep={step}
    />
  );
}

export function TargetScreen(props: CheckProps) {
  const { machine, next, step, onBack, rest } = props;
  const aim = useAim(props);
  return (
    <Page
      title={say("target.title")}
      place={machine.body.machine.name}
      step={step}
      layout="question"
      onBack={onBack}
      action={<MainAction onPress={next}>{say("go_on")}</MainAction>}
    >
      <Above aim={aim} />
      <BandPart machine={machine} aim={aim} />
      <AimStepper aim={aim} />
      {/* The one screen has a key for the target and none for the mark. */}
      {rest[0] === "change" ? (
        <PlaceLink to={address("machines", machine.machine, "fill", "change")}>
          {say("compact.fill")}
        </PlaceLink>
      ) : null}
    </Page>
  );
}

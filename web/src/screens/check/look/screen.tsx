// Look and smell: one list, several ticks, before anything is measured or added.
import { useEffect } from "preact/hooks";
import { MainAction, PlaceLink } from "../../../elements/buttons";
import { Page } from "../../../elements/page";
import { Ticks } from "../../../elements/fields/ticks";
import { Hint } from "../../../elements/why";
import type { MachineEntry } from "../../../store/log/entry";
import {
  changeLook,
  FOAM_OPEN,
  isNormal,
  lookOf,
  seeNothing,
  type Seen,
} from "../../../store/underway/looks";
import { say } from "../../../words/say";
import { isoWithOffset } from "../../../words/times";
import { address, back, go, replace } from "../../route";
import { measurePlace } from "../place";
import { AdviceScreen } from "./advice";
import { MeasuredScreen } from "./measured";

export const ALL: readonly Exclude<Seen, "normal">[] = [
  "floating_oil",
  "foam",
  "smell",
  "grey_or_brown",
  "split",
  "cream",
  "slime",
  "rust",
  "chips_or_sludge",
  "level_odd",
  "skin_complaint",
];

export interface LookProps {
  readonly machine: MachineEntry;
}

/** What was found out about a smell or a foam goes when its tick does. */
function see(id: string, seen: readonly Seen[]): void {
  changeLook(id, {
    seen,
    ...(seen.includes("smell") ? {} : { again: "" }),
    ...(seen.includes("foam") ? {} : FOAM_OPEN),
  });
}

function SeenScreen({ machine }: LookProps) {
  const id = machine.machine;
  const look = lookOf(id).value;
  const chosen = ALL.filter((code) => look.seen.includes(code));
  const isUsual = isNormal(look);
  const goOn = (): void => {
    go("machines", id, "look", "advice");
  };
  const nothing = (): void => {
    if (!isUsual) return;
    seeNothing(id, isoWithOffset(new Date()));
    go("machines", id, measurePlace(id));
  };
  return (
    <Page
      title={say("look.title")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", id);
      }}
      action={
        isUsual ? undefined : (
          <MainAction onPress={goOn} about={chosen.join()}>
            {say("go_on")}
          </MainAction>
        )
      }
    >
      {/* The usual answer is one tap, above a list that is longer than the screen. */}
      <MainAction onPress={nothing} busy={!isUsual}>
        {say("look.nothing")}
      </MainAction>
      <Hint id="hint" hint={say("look.hint")} why={say("look.why")} />
      <Ticks
        labelledBy="question"
        options={ALL.map((value) => ({ value, word: say(`look_seen.${value}`) }))}
        chosen={chosen}
        onChange={(seen) => {
          see(id, seen);
        }}
      />
      <PlaceLink to={address("machines", id, "look", "measured")}>{say("look.measured")}</PlaceLink>
      <PlaceLink to={address("machines", id, "since", "look")}>{say("since.link")}</PlaceLink>
      <p class="note">{say("look.distance")}</p>
    </Page>
  );
}

function ToFirst({ id }: { readonly id: string }) {
  useEffect(() => {
    replace("machines", id, "look");
  }, [id]);
  return null;
}

export function LookScreen({ machine, parts }: LookProps & { readonly parts: readonly string[] }) {
  const [place] = parts;
  if (place === undefined) return <SeenScreen machine={machine} />;
  if (place === "measured") return <MeasuredScreen machine={machine} />;
  return place === "advice" ? <AdviceScreen machine={machine} /> : <ToFirst id={machine.machine} />;
}

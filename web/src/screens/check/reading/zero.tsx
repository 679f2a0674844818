// The zero taken just now, without leaving the check: what the instrument shows in water.
import { useState } from "preact/hooks";
import { SideAction } from "../../../elements/buttons";
import { Eyepiece } from "../../../elements/drawings/eyepiece";
import { Keypad } from "../../../elements/fields/keypad";
import { TextField } from "../../../elements/fields/textfield";
import { readingUnit, warmthUnit, type Walk } from "../../../store/underway/walk";
import { writeTyped } from "../../../words/numbers";
import { say } from "../../../words/say";
import { useCore } from "../../core";
import { checkOf, emptyError, useGate } from "../../gate";
import { replace } from "../../route";
import { AskNumber, NOTHING_WRONG, onlyAt } from "../asknumber";
import { NotSaved } from "../notsaved";
import { kindOf, type CheckProps } from "../steps";
import { useZero, withZero, zeroTyped } from "./zeronow";

const PATH = "body.machine.instrument.zero";

/** Read before the zero, a reading has another zero in it: it is taken anew. */
const NOT_READ: Partial<Walk> = { reading: "", at: "", again: [], againText: "", temperature: "" };

/** From the answers the way back leads over the reading that is missing now. */
function useGoingOn({ machine, walk, change, next, rest }: CheckProps) {
  return (): void => {
    const isRead = walk.reading.trim() !== "";
    if (isRead) change(NOT_READ);
    if (isRead && rest[1] === "answers") replace("machines", machine.machine, "reading", "change");
    else next();
  };
}

function useTyped(props: CheckProps, shows: string, warmth: string) {
  const { machine, walk, change } = props;
  const typed = machine.body.machine;
  const core = useCore();
  const { saving, keep } = useZero(machine, useGoingOn(props));
  const look = (text: string) => async () => {
    const changed = withZero(typed, zeroTyped(typed, text, warmth));
    if (changed === null) return NOTHING_WRONG;
    return onlyAt(checkOf(await core.ask("read_machine", { machine: changed })), PATH);
  };
  const gate = useGate({
    plain: shows.trim() === "" ? [emptyError(`${PATH}.shows`)] : [],
    look: look(shows),
    kept: walk.kept,
    onKept: (kept) => {
      change({ kept });
    },
    onPass: () => {
      keep(zeroTyped(typed, shows, warmth));
    },
    about: `${shows} ${warmth}`,
  });
  return { gate, saving, keep };
}

function Below(props: CheckProps & { warmth: string; onWarmth: (text: string) => void }) {
  const { machine, walk, warmth, onWarmth } = props;
  const typed = machine.body.machine;
  const unit = readingUnit(typed);
  return (
    <>
      {kindOf(typed).asksWarmth ? (
        <TextField
          id="zero-warmth"
          label={say("zero.temperature")}
          unit={warmthUnit(typed)}
          text={warmth}
          onText={onWarmth}
        />
      ) : null}
      {walk.reading.trim() === "" ? null : (
        <p class="note">
          {say("zero_now.read_again", { reading: writeTyped({ text: walk.reading, unit }) })}
        </p>
      )}
    </>
  );
}

export function ZeroScreen(props: CheckProps) {
  const typed = props.machine.body.machine;
  const [shows, setShows] = useState("");
  const [warmth, setWarmth] = useState("");
  const { gate, saving, keep } = useTyped(props, shows, warmth);
  const unit = readingUnit(typed);
  const isPlain = shows.trim() === "" && unit !== "nD";
  const turn = (): void => {
    setShows(shows.startsWith("-") ? shows.slice(1) : `-${shows}`);
  };
  return (
    <AskNumber
      {...props}
      title={say("zero_now.title")}
      hint={say("zero_now.hint")}
      why={say("zero_now.why")}
      field={say("field.zero_shows")}
      unit={unit}
      text={shows}
      onText={setShows}
      gate={gate}
      side={<SideAction onPress={turn}>{say("zero_now.below")}</SideAction>}
      drawing={<Eyepiece name={say("reading.drawing_empty")} value={isPlain ? 0 : null} />}
      below={
        <>
          <NotSaved saving={saving} />
          <Below {...props} warmth={warmth} onWarmth={setWarmth} />
        </>
      }
      keys={<Keypad text={shows} sign="decimal" onText={setShows} />}
      action={
        isPlain
          ? {
              word: say("zero_now.shows_0"),
              onPress: () => {
                keep(zeroTyped(typed, "0", warmth));
              },
            }
          : { word: say("zero_now.keep"), onPress: gate.pass }
      }
    />
  );
}

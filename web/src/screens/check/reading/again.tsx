// Further readings of the same sample: pycore takes the mean, and asks where they differ too much.
import { MainAction, SideAction } from "../../../elements/buttons";
import { Keypad } from "../../../elements/fields/keypad";
import { assessBody, readingUnit, type Walk } from "../../../store/underway/walk";
import { writeTyped } from "../../../words/numbers";
import { say } from "../../../words/say";
import { useCore, useResult } from "../../core";
import { checkOf, emptyError, useGate } from "../../gate";
import { AskNumber, onlyAt } from "../asknumber";
import { readingDetails } from "./formula";
import { Eyepiece } from "../../../elements/drawings/eyepiece";
import { Page } from "../../../elements/page";
import type { CheckProps } from "../steps";

const PATH = "body.reading.again";
/** The contract's own limit: the first reading and nine more. */
const MOST_AGAIN = 9;

/** What was read so far, and the mean as pycore has it. */
function SoFar({ machine, walk }: Pick<CheckProps, "machine" | "walk">) {
  const typed = machine.body.machine;
  const unit = readingUnit(typed);
  const body = assessBody(typed, walk, { dip: false, reading: true });
  const [mean] = readingDetails(useResult("assess_sump", body), {
    again: body.reading?.again ?? [],
  });
  const all = [walk.reading, ...walk.again].map((text) => writeTyped({ text, unit }));
  return (
    <div role="status">
      <p class="note">
        {say("again.so_far")} {all.join(", ")}
      </p>
      {walk.again.length === 0 ? null : <p class="live">{mean}</p>}
    </div>
  );
}

function LastOut({ walk, change }: Pick<CheckProps, "walk" | "change">) {
  if (walk.again.length === 0) return null;
  return (
    <SideAction
      onPress={() => {
        change({ again: walk.again.slice(0, -1) });
      }}
    >
      {say("again.undo")}
    </SideAction>
  );
}

function Enough({ machine, walk, change, next, step, onBack }: CheckProps) {
  return (
    <Page
      title={say("again.full")}
      place={machine.body.machine.name}
      step={step}
      onBack={onBack}
      side={<LastOut walk={walk} change={change} />}
      action={<MainAction onPress={next}>{say("again.done")}</MainAction>}
    >
      <SoFar machine={machine} walk={walk} />
    </Page>
  );
}

function useAgain({ machine, walk, change }: CheckProps) {
  const core = useCore();
  const text = walk.againText.trim();
  const added: Walk = { ...walk, again: [...walk.again, walk.againText] };
  const body = assessBody(machine.body.machine, added, { dip: false, reading: true });
  return useGate({
    plain: text === "" ? [emptyError(PATH)] : [],
    look: () => core.ask("assess_sump", body, "again").then((a) => onlyAt(checkOf(a), PATH)),
    kept: walk.kept,
    onKept: (kept) => {
      change({ kept });
    },
    onPass: () => {
      change({ again: added.again, againText: "" });
    },
    about: `${walk.again.length} ${walk.againText}`,
  });
}

export function AgainScreen(props: CheckProps) {
  const { machine, walk, change, next } = props;
  const gate = useAgain(props);
  if (walk.again.length >= MOST_AGAIN) return <Enough {...props} />;
  const onText = (againText: string): void => {
    change({ againText });
  };
  const isDone = walk.againText.trim() === "" && walk.again.length > 0;
  return (
    <AskNumber
      {...props}
      title={say("again.title")}
      hint={say("again.hint")}
      why={say("again.why")}
      field={say("field.reading")}
      unit={readingUnit(machine.body.machine)}
      text={walk.againText}
      onText={onText}
      gate={gate}
      side={<LastOut walk={walk} change={change} />}
      drawing={<Eyepiece name={say("reading.drawing_empty")} value={null} />}
      below={<SoFar machine={machine} walk={walk} />}
      keys={<Keypad text={walk.againText} sign="decimal" onText={onText} />}
      action={
        isDone
          ? { word: say("again.done"), onPress: next }
          : { word: say("again.add"), onPress: gate.pass }
      }
    />
  );
}

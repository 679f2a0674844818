// What the stick stood on. Chips under it make the level read too low, so the dip counts as rough.
import { Answers, type Option } from "../../../elements/fields/choice";
import { Page } from "../../../elements/page";
import { ToolDrawing } from "../../../elements/drawings/tools";
import { Hint } from "../../../elements/why";
import { hasDip } from "../../../store/log/entry";
import { lastCheckWith } from "../../../store/log/machines";
import { touchedOf, type Touched } from "../../../store/underway/walk";
import { touchedWord } from "../../../words/codes";
import { say } from "../../../words/say";
import type { CheckProps } from "../steps";

function moving(): Option<Touched> {
  return {
    value: "moving",
    word: touchedWord("moving"),
    note: say("touched.moving_note"),
    drawing: <ToolDrawing tool="moving" />,
  };
}

export function TouchedScreen({ machine, change, next, step, onBack }: CheckProps) {
  const options: readonly Option<Touched>[] = [
    {
      value: "hard_floor",
      word: touchedWord("hard_floor"),
      note: say("touched.hard_floor_note"),
      drawing: <ToolDrawing tool="floor" />,
    },
    {
      value: "chips",
      word: touchedWord("chips"),
      note: say("touched.chips_note"),
      drawing: <ToolDrawing tool="chips" />,
    },
    {
      value: "unsure",
      word: touchedWord("unsure"),
      note: say("touched.unsure_note"),
      drawing: <ToolDrawing tool="unsure" />,
    },
    // Where the marks are true while the pump runs nothing is waited for.
    ...(machine.body.machine.sump.level_true === "running" ? [] : [moving()]),
  ];
  const last = touchedOf(lastCheckWith(machine.machine, hasDip)?.body.dip ?? {});
  return (
    <Page
      title={say("touched.title")}
      place={machine.body.machine.name}
      step={step}
      onBack={onBack}
    >
      <Hint id="hint" hint={say("touched.hint")} why={say("touched.why")} />
      <Answers
        options={options}
        last={{ value: last, word: say("last_answer") }}
        onAnswer={(touched) => {
          change({ touched });
          next();
        }}
      />
    </Page>
  );
}

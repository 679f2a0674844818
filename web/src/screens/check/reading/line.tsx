// How well the line could be read: it decides how far the reading is trusted.
import { PlaceLink } from "../../../elements/buttons";
import { Answers, type Option } from "../../../elements/fields/choice";
import { DigitalWindow, Eyepiece, type LineKind } from "../../../elements/drawings/eyepiece";
import { Page } from "../../../elements/page";
import { Hint } from "../../../elements/why";
import { hasReading } from "../../../store/log/entry";
import { lastCheckWith } from "../../../store/log/machines";
import type { Line } from "../../../store/underway/walk";
import { lineWord } from "../../../words/codes";
import { say } from "../../../words/say";
import { address, go, replace } from "../../route";
import type { CheckProps } from "../steps";

/** An example field for the choice; no measurement stands behind it. */
const EXAMPLE = 6;
const KINDS: readonly Line[] = ["digital", "optical", "optical_oily", "blurred"];

function drawingOf(line: Line) {
  const kind: LineKind = line;
  return line === "digital" ? (
    <DigitalWindow />
  ) : (
    <Eyepiece name="" value={EXAMPLE} kind={kind} scale={false} />
  );
}

function MoreReadings({ id }: { readonly id: string }) {
  return (
    <div class="places">
      <PlaceLink to={address("machines", id, "again", "change")}>{say("again.ask")}</PlaceLink>
      <PlaceLink to={address("machines", id, "second", "change")}>{say("second.ask")}</PlaceLink>
    </div>
  );
}

export function LineScreen(props: CheckProps) {
  const { machine, change, next, step, onBack, rest, beside = false } = props;
  const options: readonly Option<Line>[] = KINDS.map((value) => ({
    value,
    word: lineWord(value),
    drawing: drawingOf(value),
  }));
  // When only this answer is changed, Continue leads back over one page and not over two.
  const lead = rest[0] === "change" ? replace : go;
  const last = lastCheckWith(machine.machine, hasReading)?.body.reading.how ?? "";
  return (
    <Page title={say("line.title")} place={machine.body.machine.name} step={step} onBack={onBack}>
      <Hint id="hint" hint={say("line.hint")} why={say("line.why")} />
      <Answers
        options={options}
        last={{ value: last, word: say("last_answer") }}
        onAnswer={(line) => {
          change({ line });
          if (line === "blurred" && !beside) lead("machines", machine.machine, "blurred", ...rest);
          else next();
        }}
      />
      {beside ? null : <MoreReadings id={machine.machine} />}
    </Page>
  );
}

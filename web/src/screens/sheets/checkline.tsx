// What this phone knows of the printer: how long its 100 mm line came out on this paper.
import { OtherAction, PlaceLink } from "../../elements/buttons";
import { say } from "../../words/say";
import { writeTyped } from "../../words/numbers";
import { address } from "../route";
import { keepLine, lineOf, LINE_UNIT, type PaperName } from "./settings";

function sentence(name: PaperName, isNext: boolean): string {
  const line = lineOf(name);
  if (line === null) return say(isNext ? "print.line_how" : "print.line_none");
  const blanks = {
    paper: say(`print.${name}`),
    length: writeTyped({ text: line.text, unit: LINE_UNIT }),
  };
  return line.passes ? say("print.line_true", blanks) : say("print.line_corrected", blanks);
}

interface CheckLineProps {
  readonly paper: PaperName;
  /** After printing this is what to do next. */
  readonly printed: boolean;
}

export function CheckLine({ paper, printed }: CheckLineProps) {
  const line = lineOf(paper);
  const isNext = printed && line === null;
  return (
    <section class="check-line">
      <h2>{say(isNext ? "print.measure_now" : "print.printer")}</h2>
      <p role="status">{sentence(paper, isNext)}</p>
      {line === null ? (
        <PlaceLink to={address("print", "line", paper)}>{say("print.line_link")}</PlaceLink>
      ) : (
        <OtherAction
          onPress={() => {
            keepLine(paper, null);
          }}
        >
          {say("print.line_reset")}
        </OtherAction>
      )}
    </section>
  );
}

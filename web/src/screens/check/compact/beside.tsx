// What stands beside the keys: answers that are chosen and not typed, each a key that leads to its own
// guided page and back; and the row for look and smell, as long as nobody has looked.
import { Fault } from "../../../elements/fault";
import { useGuard } from "../../../elements/guard";
import { isLooked, isNormal, lookOf, seeNothing } from "../../../store/underway/looks";
import { lineWord, touchedWord } from "../../../words/codes";
import { writeTyped } from "../../../words/numbers";
import { isKey, say } from "../../../words/say";
import { isoWithOffset } from "../../../words/times";
import { address } from "../../route";
import { dipSteps } from "../dip/level";
import { kindOf, type CheckProps } from "../steps";

interface KeyProps {
  readonly name: string;
  /** In one short word; the accessible name has the whole answer. */
  readonly value: string;
  readonly field: string;
  readonly answer: string;
  readonly to: string;
}

/** What is seen comes first in what is spoken: who says the word on the key is understood. */
function SideKey({ name, value, field, answer, to }: KeyProps) {
  const seen = value === say("compact.unanswered") ? name : `${name} ${value}`;
  return (
    <a
      class="side-key"
      href={to}
      aria-label={say("compact.answer", { seen, field, value: answer })}
    >
      <span class="side-name">{name}</span>
      <span class="side-value">{value}</span>
    </a>
  );
}

function short(key: string, whole: string): string {
  return isKey(key) ? say(key) : whole;
}

type Props = Pick<CheckProps, "machine" | "walk">;

function keysOf({ machine, walk }: Props): readonly KeyProps[] {
  const id = machine.machine;
  const typed = machine.body.machine;
  const to = (place: string): string => address("machines", id, place, "change");
  const open = { value: say("compact.unanswered"), answer: say("answers.missing") };
  const touched = touchedWord(walk.touched);
  const line = lineWord(walk.line);
  const aim = writeTyped(walk.aim === "" ? typed.target.aim : { text: walk.aim, unit: "%" });
  const look = say(isNormal(lookOf(id).value) ? "compact.look.fine" : "compact.look.seen");
  const stick: KeyProps = {
    name: say("compact.stick"),
    field: say("answers.touched"),
    ...(walk.touched === ""
      ? open
      : { value: short(`compact.stick.${walk.touched}`, touched), answer: touched }),
    to: to("touched"),
  };
  const read: KeyProps = {
    name: say("compact.line"),
    field: say("answers.line"),
    ...(walk.line === ""
      ? open
      : { value: short(`compact.line.${walk.line}`, line), answer: line }),
    to: to("line"),
  };
  const target: KeyProps = {
    name: say("compact.target"),
    field: say("answers.aim"),
    value: aim,
    answer: aim,
    to: to("target"),
  };
  return [
    ...(dipSteps(typed).includes("touched") ? [stick] : []),
    read,
    ...(kindOf(typed).hasPercent ? [target] : []),
    ...(isLooked(id)
      ? [
          {
            name: say("compact.look_key"),
            field: say("compact.look"),
            value: look,
            answer: look,
            to: address("machines", id, "look"),
          },
        ]
      : []),
  ];
}

export function SideKeys(props: Props) {
  return (
    <div class="side-keys">
      {keysOf(props).map((key) => (
        <SideKey key={key.name} {...key} />
      ))}
    </div>
  );
}

interface LookRowProps extends Pick<Props, "machine"> {
  readonly isFaulty: boolean;
  /** The row goes away with its answer: another one takes the focus. */
  readonly onAnswer: () => void;
}

/** The usual answer in one tap; anything else has the guided page with its list. */
export function LookRow({ machine, isFaulty, onAnswer }: LookRowProps) {
  const id = machine.machine;
  const isUsual = isNormal(lookOf(id).value);
  const nothing = useGuard(() => {
    if (!isUsual) return;
    seeNothing(id, isoWithOffset(new Date()));
    onAnswer();
  });
  if (isLooked(id)) return null;
  return (
    <div class="look-place">
      <div class="look-row" role="group" aria-labelledby="look-name">
        <span id="look-name" class="look-name">
          {say("compact.look")}
        </span>
        <button type="button" class="equal look-fine" aria-disabled={!isUsual} onClick={nothing}>
          {say("look.nothing")}
        </button>
        <a class="equal look-some" href={address("machines", id, "look")}>
          {say("compact.something")}
        </a>
      </div>
      {isFaulty ? <Fault>{say("look.title")}</Fault> : null}
    </div>
  );
}

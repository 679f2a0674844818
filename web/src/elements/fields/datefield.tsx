// A day in three parts: its number, its month by name, its year. The browser's own field for a day shows
// 03/04, which is two different days in two countries. The day stands below in words.
import { say } from "../../words/say";
import { isCalendarDay, monthNames, writeDay } from "../../words/times";
import { Fault } from "../fault";

interface DateFieldProps {
  readonly id: string;
  readonly label: string;
  /** Year-month-day; pycore reads it and says what is wrong with it. */
  readonly text: string;
  readonly fault?: string | undefined;
  readonly onText: (text: string) => void;
}

interface Parts {
  readonly year: string;
  readonly month: string;
  readonly day: string;
}

/** Stands for a part that nobody gave: pycore refuses it, and the sentence shows it. */
const OPEN = "?";
const PARTS = /^(.*)-(\d\d|\?)-(.*)$/;
const TIME = /T.*$/;

const given = (part: string): string => (part === OPEN ? "" : part);

/** A moment shows as its day. */
function partsOf(text: string): Parts {
  const [, year = "", month = "", day = ""] = PARTS.exec(text.replace(TIME, "")) ?? [];
  return { year: given(year), month: given(month), day: given(day).replace(/^0/, "") };
}

function textOf(parts: Parts): string {
  const year = parts.year.trim();
  const day = parts.day.trim();
  if (year + parts.month + day === "") return "";
  const two = /^\d$/.test(day) ? `0${day}` : day;
  return [year, parts.month, two].map((part) => (part === "" ? OPEN : part)).join("-");
}

function inWords(text: string): string {
  const day = text.replace(TIME, "");
  return isCalendarDay(day) ? writeDay(day) : say("date.none");
}

interface PartProps {
  readonly id: string;
  readonly parts: Parts;
  readonly described: string;
  readonly faulty: boolean;
  readonly onParts: (change: Partial<Parts>) => void;
}

function Typed(props: PartProps & { readonly part: "day" | "year" }) {
  const { id, part, parts, described, faulty, onParts } = props;
  return (
    <div class={`day-${part}`}>
      <label for={`${id}-${part}`}>{say(`date.${part}`)}</label>
      <input
        id={`${id}-${part}`}
        class="text-box"
        type="text"
        inputMode="numeric"
        autoComplete="off"
        value={parts[part]}
        aria-invalid={faulty}
        aria-describedby={described}
        onInput={(event) => {
          onParts({ [part]: event.currentTarget.value });
        }}
      />
    </div>
  );
}

function Month({ id, parts, described, faulty, onParts }: PartProps) {
  return (
    <div class="day-month">
      <label for={`${id}-month`}>{say("date.month")}</label>
      <select
        id={`${id}-month`}
        class="text-box"
        value={parts.month}
        aria-invalid={faulty}
        aria-describedby={described}
        onChange={(event) => {
          onParts({ month: event.currentTarget.value });
        }}
      >
        <option value="">–</option>
        {monthNames().map((name, i) => (
          <option key={name} value={String(i + 1).padStart(2, "0")}>
            {name}
          </option>
        ))}
      </select>
    </div>
  );
}

export function DateField({ id, label, text, fault, onText }: DateFieldProps) {
  const parts = partsOf(text);
  const described = [`${id}-day-said`, ...(fault === undefined ? [] : [`${id}-fault`])].join(" ");
  const onParts = (change: Partial<Parts>): void => {
    onText(textOf({ ...parts, ...change }));
  };
  const common = { id, parts, described, faulty: fault !== undefined, onParts };
  return (
    <fieldset class="text-field day-field">
      <legend>{label}</legend>
      {fault === undefined ? null : <Fault id={`${id}-fault`}>{fault}</Fault>}
      <div class="day-parts">
        <Typed {...common} part="day" />
        <Month {...common} />
        <Typed {...common} part="year" />
      </div>
      <p id={`${id}-day-said`} class="note" role="status">
        {inWords(text)}
      </p>
    </fieldset>
  );
}

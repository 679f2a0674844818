// A day, chosen from the phone's own calendar, which works without a network. The day stands below in
// words, since 03/04 is two different days in two countries.
import { say } from "../words/say";
import { writeDay } from "../words/times";
import { Fault } from "./fault";

interface DateFieldProps {
  readonly id: string;
  readonly label: string;
  /** Year-month-day; pycore reads it and says what is wrong with it. */
  readonly text: string;
  readonly fault?: string | undefined;
  readonly onText: (text: string) => void;
}

/** Stands for a day of which only a part is typed: the browser tells no more, and pycore refuses it. */
const PART = "–";
const DAY = /^\d{4}-\d{2}-\d{2}/;

/** A moment shows as its day. */
function dayOf(text: string): string {
  return DAY.exec(text)?.[0] ?? "";
}

function inWords(day: string): string {
  return Number.isNaN(Date.parse(day)) ? say("date.none") : writeDay(day);
}

export function DateField({ id, label, text, fault, onText }: DateFieldProps) {
  const day = dayOf(text);
  const described = [`${id}-day`, ...(fault === undefined ? [] : [`${id}-fault`])].join(" ");
  const look = (box: HTMLInputElement): void => {
    const typed = box.validity.badInput ? PART : box.value;
    if (typed !== (day === "" ? text : day)) onText(typed);
  };
  return (
    <div class="text-field">
      <label for={id}>{label}</label>
      {fault === undefined ? null : <Fault id={`${id}-fault`}>{fault}</Fault>}
      <div class="text-row">
        <input
          id={id}
          class="text-box"
          type="date"
          value={day}
          aria-invalid={fault !== undefined}
          aria-describedby={described}
          onInput={(event) => {
            look(event.currentTarget);
          }}
          onBlur={(event) => {
            look(event.currentTarget);
          }}
        />
      </div>
      <p id={`${id}-day`} class="note" role="status">
        {inWords(day)}
      </p>
    </div>
  );
}

// Until when a tag holds, and who says so. The time is fixed when it is chosen: "tomorrow" moves on.
import { Choice } from "../../elements/fields/choice";
import { DateField } from "../../elements/fields/datefield";
import { TextField } from "../../elements/fields/textfield";
import { ownName } from "../../store/phone/name";
import { say } from "../../words/say";
import { isCalendarDay, isoWithOffset, writeMoment } from "../../words/times";
import type { Telling } from "./telling";

const HOUR_MS = 3_600_000;
/** Hours from now; whole hours are enough for a tag (common practice, no source). */
const AFTER_H = { shift: 8, day: 24, week: 168 } as const;
const WHENS = ["open", "shift", "day", "week", "other"] as const;
type When = (typeof WHENS)[number];

function whenOf(telling: Telling): When {
  return WHENS.find((one) => one === telling.text("when")) ?? "open";
}

function momentOf(when: When): string {
  if (when === "open" || when === "other") return "";
  return isoWithOffset(new Date(Date.now() + AFTER_H[when] * HOUR_MS));
}

/** Whether a day is asked for and not there yet. */
export function isUntilMissing(telling: Telling): boolean {
  return whenOf(telling) === "other" && !isCalendarDay(telling.text("until"));
}

export function untilOf(telling: Telling): { readonly until?: string } {
  const until = telling.text("until");
  const when = whenOf(telling);
  if (when === "open" || until === "" || isUntilMissing(telling)) return {};
  // A day holds to its end, on the clock of this place.
  return { until: isCalendarDay(until) ? isoWithOffset(new Date(`${until}T23:59:59`)) : until };
}

/** The chosen one with the time at which it was chosen. */
function wordOf(when: When, chosen: string): string {
  if (when === "open" || when === "other") return say(`tag.until_${when}`);
  const until = chosen === "" ? momentOf(when) : chosen;
  return say(`tag.until_${when}`, { time: writeMoment(until) });
}

export function UntilField({
  telling,
  asked = false,
}: {
  readonly telling: Telling;
  readonly asked?: boolean;
}) {
  const when = whenOf(telling);
  const until = telling.text("until");
  return (
    <>
      <h2 id="tag-until">{say("tag.until")}</h2>
      <Choice
        name="until"
        labelledBy="tag-until"
        options={WHENS.map((value) => ({
          value,
          word: wordOf(value, value === when ? until : ""),
        }))}
        chosen={when}
        onChoose={(value) => {
          telling.change("when", value, { until: momentOf(value) });
        }}
      />
      {when === "other" ? (
        <DateField
          id="tag-day"
          label={say("tag.day")}
          text={until}
          fault={asked && isUntilMissing(telling) ? say("tag.day_missing") : undefined}
          onText={(text) => {
            telling.change("until", text);
          }}
        />
      ) : null}
    </>
  );
}

/** As it was typed here, else who used this phone last. */
export function nameOf(telling: Telling): string {
  return (telling.isTyped("by") ? telling.text("by") : ownName()).trim();
}

export function NameField({
  telling,
  fault = false,
}: {
  readonly telling: Telling;
  readonly fault?: boolean;
}) {
  return (
    <TextField
      id="told-by"
      label={say("tag.name")}
      hint={say("tag.name_hint")}
      number={false}
      text={telling.isTyped("by") ? telling.text("by") : ownName()}
      fault={fault ? say("tag.name_missing") : undefined}
      onText={(text) => {
        telling.change("by", text);
      }}
    />
  );
}

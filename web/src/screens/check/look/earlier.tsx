// What the log knows already and judges the look by: nobody types it again, and each has a Change.
import { useState } from "preact/hooks";
import type { LookBackResult } from "../../../core/messages";
import { PlaceLink } from "../../../elements/buttons";
import { TextField } from "../../../elements/fields/textfield";
import { changeLook, type Look } from "../../../store/underway/looks";
import { writeTyped } from "../../../words/numbers";
import { say } from "../../../words/say";
import { writeMoment } from "../../../words/times";
import { address } from "../../route";

/** What is shown at once; the rule of the interval looks at the last three. */
const MOST_SHOWN = 5;

interface EarlierProps {
  readonly id: string;
  readonly look: Look;
  readonly earlier: LookBackResult | null;
}

function FirstPh({
  id,
  look,
  earlier,
  fault,
}: EarlierProps & { readonly fault?: string | undefined }) {
  const found = earlier?.first_fill_ph;
  const [isOpen, setOpen] = useState(look.firstPh !== "");
  if (found === undefined || isOpen)
    return (
      <TextField
        id="firstPh"
        label={say("look.first_ph_label")}
        text={look.firstPh}
        fault={fault}
        onText={(firstPh) => {
          changeLook(id, { firstPh });
        }}
      />
    );
  const key = found.from === "log" ? "look.first_ph" : "look.first_ph_set_up";
  return (
    <div class="known-row">
      <span>{say(key, { ph: writeTyped(found.ph), time: writeMoment(found.measured_at) })}</span>
      <button
        type="button"
        class="line-button"
        aria-label={say("look.first_ph_change")}
        onClick={() => {
          setOpen(true);
        }}
      >
        {say("change")}
      </button>
    </div>
  );
}

function NitriteBefore({ earlier }: Pick<EarlierProps, "earlier">) {
  const rows = (earlier?.nitrite_before ?? []).slice(-MOST_SHOWN);
  if (rows.length === 0) return null;
  return (
    <section>
      <h2>{say("look.nitrite_before")}</h2>
      {rows.map(({ nitrite, entry, measured_at }) => {
        const blanks = { nitrite: writeTyped(nitrite), time: writeMoment(measured_at) };
        return (
          <div key={entry} class="known-row">
            <span>{say("look.nitrite_row", blanks)}</span>
            <PlaceLink to={address("log", entry)} label={say("look.nitrite_change", blanks)}>
              {say("change")}
            </PlaceLink>
          </div>
        );
      })}
    </section>
  );
}

export function Earlier(props: EarlierProps & { readonly fault?: string | undefined }) {
  return (
    <>
      <FirstPh {...props} />
      <NitriteBefore earlier={props.earlier} />
    </>
  );
}

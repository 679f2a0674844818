// How a machine is used, where that is not simply in use: loud on its own page, in one line in the list.
import { PlaceLink } from "../../elements/buttons";
import { StateShape } from "../../elements/statemark";
import type { MachineEntry } from "../../store/log/entry";
import type { StateEntry } from "../../store/log/entry";
import { heldOf, statedOf } from "../../store/log/machines";
import { isAtRest, isHeld } from "../../store/written/told";
import { shiftStateWord, stopReasonWord } from "../../words/codes";
import { say, startLarge } from "../../words/say";
import { writeMoment } from "../../words/times";
import { now_ms } from "../now";
import { address } from "../route";

/** A tag is not lifted by the clock: when its time has passed, somebody has to ask. */
function untilWords({ body }: StateEntry): string | null {
  const { state, until } = body;
  if (until === undefined) return state === "on_hold" ? say("tell.until_open") : null;
  const key = Date.parse(until) < now_ms.value ? "tell.until_past" : "tell.until";
  return say(key, { time: writeMoment(until) });
}

function byWords({ by }: StateEntry): string | undefined {
  return by === undefined ? undefined : say("tell.by", { by });
}

/** "On hold: waits for the laboratory" */
export function stateWords({ body }: StateEntry): string {
  const state = startLarge(shiftStateWord(body.state));
  return body.reason === undefined
    ? state
    : say("told.state_why", { state, why: stopReasonWord(body.reason) });
}

/** In the list: what is held stands first and bears the sign of stopping. */
export function StatedLine({ machine }: { readonly machine: string }) {
  const stated = statedOf(machine);
  if (stated === undefined) return null;
  const more = isHeld(stated.body)
    ? [untilWords(stated), byWords(stated)].filter((part) => part !== null && part !== undefined)
    : [];
  return (
    <span class={isHeld(stated.body) ? "machine-due machine-held" : "machine-due"}>
      {isHeld(stated.body) ? <StateShape state="stop" size={22} /> : null}
      <span>{[stateWords(stated), ...more].join(" · ")}</span>
    </span>
  );
}

/** Above a recipe and a pour: who went on has seen the tag, who comes later has not. */
export function HeldLine({ machine }: { readonly machine: string }) {
  return heldOf(machine) === undefined ? null : (
    <p class="stated">
      <StatedLine machine={machine} />
    </p>
  );
}

/** What is held gets nothing poured in; the tag says why, until when and who hung it. */
export function TagFacts({ stated }: { readonly stated: StateEntry }) {
  const { remarks, state } = stated.body;
  const until = untilWords(stated);
  return (
    <>
      <strong>
        {isHeld(stated.body) ? <StateShape state="stop" /> : null}
        <span>{stateWords(stated)}</span>
      </strong>
      {remarks === undefined ? null : <span>{remarks}</span>}
      {until === null ? null : <span>{until}</span>}
      {isHeld(stated.body) ? <span>{say("tell.do_not_pour")}</span> : null}
      {isAtRest({ state }) ? <span>{say("tell.checks_rest")}</span> : null}
      <span class="note">
        {say("tell.since", { time: writeMoment(stated.measured_at) })}
        {stated.by === undefined ? "" : ` · ${say("tell.by", { by: stated.by })}`}
      </span>
    </>
  );
}

export function Stated({ machine }: { readonly machine: MachineEntry }) {
  const id = machine.machine;
  const stated = statedOf(id);
  if (stated === undefined) return null;
  return (
    <section class="stated" role="status">
      <TagFacts stated={stated} />
      {isHeld(stated.body) ? (
        <PlaceLink to={address("machines", id, "tell", "off")}>{say("tag.off")}</PlaceLink>
      ) : null}
    </section>
  );
}

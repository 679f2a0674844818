// From one way of checking to the other, at any time: what was typed belongs to the check and not to the
// page, so nothing is lost.
import { SideAction } from "../../elements/buttons";
import type { MachineEntry } from "../../store/log/entry";
import { chooseMode, mode } from "../../store/phone/mode";
import { say } from "../../words/say";
import { replace } from "../route";
import { ALL, guidedPlace } from "./place";

/**
 * In the top bar of every question. The keys below need all the room, so the whole of the machine's name
 * is its target.
 */
export function ToOneScreen({ machine }: { readonly machine: MachineEntry }) {
  return (
    <button
      type="button"
      class="top-switch"
      onClick={() => {
        chooseMode("compact");
        replace("machines", machine.machine, ALL);
      }}
    >
      {say("compact.open")}
    </button>
  );
}

/** In the top bar of the one screen: leads to the first question that is not answered yet. */
export function ToGuided({ machine }: { readonly machine: MachineEntry }) {
  return (
    <SideAction
      onPress={() => {
        chooseMode("guided");
        replace("machines", machine.machine, guidedPlace(machine));
      }}
    >
      {say("compact.leave")}
    </SideAction>
  );
}

/** On the machine's own page, for the next check and all that follow on this phone. */
export function ModeSwitch() {
  const isOn = mode.value === "compact";
  return (
    <button
      type="button"
      class="mode-switch"
      role="switch"
      aria-checked={isOn}
      aria-labelledby="mode-word"
      aria-describedby="mode-note"
      onClick={() => {
        chooseMode(isOn ? "guided" : "compact");
      }}
    >
      <span class="mode-mark" aria-hidden="true" />
      <span>
        <span id="mode-word" class="mode-word">
          {say("compact.switch")}
        </span>
        <span id="mode-note" class="note">
          {say("compact.switch_note")}
        </span>
      </span>
    </button>
  );
}

// The machine's code on its own page: to be written down where nothing can be printed.
import { PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import type { MachineEntry } from "../../store/log/entry";
import { isKey, say } from "../../words/say";
import { CoreTrouble } from "../foot";
import { address, back } from "../route";
import { useCode, type Giving } from "./give";
import { writeCode } from "./written";

/** Null once the code is there. */
export function givingSentence(giving: Giving): string | null {
  if (giving.kind === "waiting") return say("code.waiting");
  if (giving.kind === "down") return say("code.down");
  if (giving.kind === "given") return null;
  const key = `store.${giving.trouble}`;
  return isKey(key) ? say(key) : say("store.other");
}

export function CodeOfMachine({ machine }: { readonly machine: MachineEntry }) {
  const giving = useCode(machine, true);
  const sentence = givingSentence(giving);
  const id = machine.machine;
  return (
    <Page
      title={say("code.of_machine")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", id);
      }}
    >
      {giving.kind === "given" ? <p class="code-large">{writeCode(giving.code)}</p> : null}
      {sentence === null ? <p>{say("code.use")}</p> : <p role="status">{sentence}</p>}
      <div class="places">
        <PlaceLink to={address("machines", id, "print", "machine_card")}>
          {say("code.print")}
        </PlaceLink>
      </div>
      <CoreTrouble />
    </Page>
  );
}

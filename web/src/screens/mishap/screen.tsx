// Something went wrong: what happened, then what is done about it, then the entry.
import { PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import type { AdviseMishapBody } from "../../core/messages";
import type { MachineEntry } from "../../store/log/entry";
import { whoToAsk } from "../../store/written/shop";
import { say } from "../../words/say";
import { address, back } from "../route";
import { AdviceScreen } from "./advice";
import { RecordScreen } from "./record";

export type Mishap = AdviseMishapBody["mishap"];

/** What happens most stands first. */
const MISHAPS: readonly Mishap[] = [
  "overfilled",
  "ran_dry",
  "wrong_drum",
  "neat_poured",
  "lumpy_bucket",
  "split",
  "cleaner_in_it",
  "oil_leak",
];

export interface MishapProps {
  readonly machine: MachineEntry;
  readonly mishap: Mishap;
}

/** Name, function or number of whoever answers for the coolant here. */
export function who(): string {
  return whoToAsk.value === "" ? say("mishap.who_unset") : whoToAsk.value;
}

export function WhoLink() {
  const word = whoToAsk.value === "" ? "mishap.who_set" : "mishap.who_change";
  return <PlaceLink to={address("who")}>{say(word)}</PlaceLink>;
}

function Chooser({ machine }: Pick<MishapProps, "machine">) {
  const id = machine.machine;
  return (
    <Page
      title={say("mishap.title")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", id);
      }}
    >
      <p class="look-never">{say("mishap.first")}</p>
      <ul class="machine-list">
        {MISHAPS.map((mishap) => (
          <li key={mishap}>
            <a class="machine-row" href={address("machines", id, "wrong", mishap)}>
              <span class="machine-name">{say(`mishap.${mishap}`)}</span>
              <span class="note">{say(`mishap.${mishap}_note`)}</span>
            </a>
          </li>
        ))}
      </ul>
      <p>{say("mishap.who", { who: who() })}</p>
      <WhoLink />
    </Page>
  );
}

export function MishapScreen({
  machine,
  parts,
}: Pick<MishapProps, "machine"> & { readonly parts: readonly string[] }) {
  const [code, page] = parts;
  const mishap = MISHAPS.find((one) => one === code);
  if (mishap === undefined) return <Chooser machine={machine} />;
  if (page === "record") return <RecordScreen key={mishap} machine={machine} mishap={mishap} />;
  return <AdviceScreen machine={machine} mishap={mishap} />;
}

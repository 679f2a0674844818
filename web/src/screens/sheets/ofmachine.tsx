// The sheets of one machine: which there are, and each of them.
import { PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { TextField } from "../../elements/fields/textfield";
import type { MachineEntry } from "../../store/log/entry";
import { say } from "../../words/say";
import { givingSentence } from "../code/shown";
import { useCode } from "../code/give";
import { address, back, HOME, replace } from "../route";
import { useEffect } from "preact/hooks";
import { given } from "../setup/given";
import { circuitOf, keepCircuit, pouredOn } from "./card";
import { isMachineSheet, MACHINE_SHEETS, sheetName, type MachineSheet } from "./kinds";
import { PailScreen } from "./pail";
import { isWholePail, pailFormOf, pailShape } from "./pailform";
import { SheetScreen, type SheetBody } from "./sheet";

/** The code stands on these, so a machine that has none is given one. */
const CODED: readonly MachineSheet[] = ["dip_scale", "machine_card"];

function isPailKnown(machine: MachineEntry): boolean {
  return isWholePail(pailFormOf(machine.machine, machine.body.machine.units));
}

function Choose({ machine }: { readonly machine: MachineEntry }) {
  const id = machine.machine;
  const hasPail = isPailKnown(machine);
  return (
    <Page
      title={say("print.title")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", id);
      }}
    >
      <ul class="sheet-kinds">
        {MACHINE_SHEETS.map((kind) => {
          const place = kind === "bucket_scale" && !hasPail ? "pail" : kind;
          return (
            <li key={kind}>
              <a class="sheet-kind" href={address("machines", id, "print", place)}>
                <span class="sheet-kind-name">{sheetName(kind)}</span>
                <span class="note">{say(`print.${kind}_use`)}</span>
              </a>
            </li>
          );
        })}
      </ul>
    </Page>
  );
}

/** What stands on the card beside the set-up. */
function cardPart({ machine, body }: MachineEntry): Partial<SheetBody> {
  const circuit = circuitOf(machine, body.machine.units.plate).value;
  const day = pouredOn(machine);
  return { ...given("circuit_volume", circuit, body.machine.units.plate), ...day };
}

function bodyOf(kind: MachineSheet, machine: MachineEntry, code: string | null): SheetBody | null {
  const typed = machine.body.machine;
  if (kind === "log_sheet") return { kind, machine: typed };
  if (kind === "bucket_scale") {
    const form = pailFormOf(machine.machine, typed.units);
    return isWholePail(form) ? { kind, machine: typed, pail_shape: pailShape(form) } : null;
  }
  if (code === null) return null;
  return kind === "dip_scale"
    ? { kind, machine: typed, code }
    : { kind, machine: typed, code, address: HOME, ...cardPart(machine) };
}

/** Left empty, pycore adds what the set-up says does not show on the stick. */
function CircuitField({ machine }: { readonly machine: MachineEntry }) {
  const { plate } = machine.body.machine.units;
  const circuit = circuitOf(machine.machine, plate);
  return (
    <TextField
      id="circuit"
      label={say("print.circuit")}
      hint={say("print.circuit_hint")}
      unit={plate}
      text={circuit.value}
      onText={(text) => {
        keepCircuit(machine.machine, plate, text);
      }}
    />
  );
}

function MachineSheetScreen({
  machine,
  kind,
}: {
  readonly machine: MachineEntry;
  readonly kind: MachineSheet;
}) {
  const isCoded = CODED.includes(kind);
  const giving = useCode(machine, isCoded);
  const sentence = isCoded ? givingSentence(giving) : null;
  const id = machine.machine;
  return (
    <SheetScreen
      kind={kind}
      body={bodyOf(kind, machine, giving.kind === "given" ? giving.code : null)}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", id, "print");
      }}
    >
      {sentence === null ? null : <p role="status">{sentence}</p>}
      {kind === "machine_card" ? <CircuitField machine={machine} /> : null}
      {kind === "bucket_scale" ? (
        <PlaceLink to={address("machines", id, "print", "pail", "change")}>
          {say("print.pail_link")}
        </PlaceLink>
      ) : null}
    </SheetScreen>
  );
}

function Leave({ id, to }: { readonly id: string; readonly to?: "pail" }) {
  useEffect(() => {
    if (to === undefined) replace("machines", id, "print");
    else replace("machines", id, "print", to);
  }, [id, to]);
  return null;
}

interface SheetsProps {
  readonly machine: MachineEntry;
  readonly parts: readonly string[];
}

export function SheetsScreen({ machine, parts }: SheetsProps) {
  const [place, how] = parts;
  if (place === undefined) return <Choose machine={machine} />;
  if (place === "pail")
    return <PailScreen key="pail" machine={machine} isChange={how === "change"} />;
  if (!isMachineSheet(place)) return <Leave id={machine.machine} />;
  // A kept address of a pail that is not known here: asked first, as from the list of sheets.
  if (place === "bucket_scale" && !isPailKnown(machine))
    return <Leave id={machine.machine} to="pail" />;
  return <MachineSheetScreen key={place} machine={machine} kind={place} />;
}

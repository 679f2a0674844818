// A tag that hangs when a clean-out begins: it comes off by a named person and with a reason, or it stays. The
// clean-out never takes it away by itself.
import { useState } from "preact/hooks";
import { MainAction } from "../../elements/buttons";
import { Choice } from "../../elements/fields/choice";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { TextField } from "../../elements/fields/textfield";
import { beginCleaning, type Cleaning } from "../../store/underway/cleaning";
import type { MachineEntry, StateEntry } from "../../store/log/entry";
import { newId } from "../../store/log/ids";
import { save } from "../../store/log/journal";
import { keepName, ownName } from "../../store/phone/name";
import { say } from "../../words/say";
import { isoWithOffset } from "../../words/times";
import { NotSaved } from "../check/notsaved";
import type { Saving } from "../check/save";
import { useCore } from "../core";
import { back } from "../route";
import { TagFacts } from "../told/stated";
import { readVersions } from "../versions";

const CHOICES = ["stays", "off"] as const;
type Chosen = (typeof CHOICES)[number] | "";

/** What one that was stopped had reached; nothing for one from the start. */
type From = Partial<Cleaning>;

/** Prepared once: a second press after a failure writes the same entry. */
function useTakingOff({ machine }: MachineEntry, from: From) {
  const core = useCore();
  const [id] = useState(newId);
  const [saving, setSaving] = useState<Saving>({ kind: "open" });
  const takeOff = async (by: string, remarks: string): Promise<void> => {
    setSaving({ kind: "saving" });
    const now = isoWithOffset(new Date());
    const outcome = await save({
      id,
      kind: "machine_state",
      machine,
      measured_at: now,
      wall: now,
      by,
      body: { state: "clean_out", remarks },
      versions: await readVersions(core),
    });
    if (outcome.kind === "not_saved") {
      setSaving({ kind: "not_saved", trouble: outcome.trouble });
      return;
    }
    keepName(by);
    beginCleaning(machine, from);
  };
  return { saving, takeOff };
}

interface FieldsProps {
  readonly by: string;
  readonly why: string;
  readonly isAsked: boolean;
  readonly onBy: (by: string) => void;
  readonly onWhy: (why: string) => void;
}

function OffFields({ by, why, isAsked, onBy, onWhy }: FieldsProps) {
  return (
    <>
      <TextField
        id="tag-why"
        label={say("clean.tag_why")}
        number={false}
        text={why}
        fault={isAsked && why.trim() === "" ? say("clean.tag_why_missing") : undefined}
        onText={onWhy}
      />
      <TextField
        id="tag-by"
        label={say("tag.name")}
        hint={say("tag.name_hint")}
        number={false}
        text={by}
        fault={isAsked && by.trim() === "" ? say("tag.name_missing") : undefined}
        onText={onBy}
      />
    </>
  );
}

/** What becomes of the tag; nothing is chosen beforehand. */
function useFate(machine: MachineEntry, from: From) {
  const [chosen, setChosen] = useState<Chosen>("");
  const [by, setBy] = useState(ownName);
  const [why, setWhy] = useState("");
  const [isAsked, setAsked] = useState(false);
  const { saving, takeOff } = useTakingOff(machine, from);
  const isWhole = chosen === "off" && by.trim() !== "" && why.trim() !== "";
  const press = (): void => {
    setAsked(true);
    if (saving.kind === "saving") return;
    if (chosen === "stays") beginCleaning(machine.machine, from);
    else if (isWhole) void takeOff(by.trim(), why.trim());
  };
  const fields = { by, why, isAsked, onBy: setBy, onWhy: setWhy };
  return { chosen, setChosen, saving, press, fields };
}

type Fate = ReturnType<typeof useFate>;

function FateFields({ chosen, setChosen, fields }: Fate) {
  return (
    <div class="told-form">
      {fields.isAsked && chosen === "" ? <Fault>{say("clean.tag_choose")}</Fault> : null}
      <h2 id="tag-then">{say("clean.tag_then")}</h2>
      <Choice
        name="tag"
        labelledBy="tag-then"
        options={CHOICES.map((value) => ({
          value,
          word: say(`clean.tag_${value}`),
          note: say(`clean.tag_${value}_note`),
        }))}
        chosen={chosen}
        onChoose={setChosen}
      />
      {chosen === "off" ? <OffFields {...fields} /> : null}
    </div>
  );
}

export function BeginHeld({
  machine,
  held,
  from,
}: {
  readonly machine: MachineEntry;
  readonly held: StateEntry;
  readonly from: From;
}) {
  const fate = useFate(machine, from);
  const { chosen, saving, press, fields } = fate;
  const about = chosen + fields.by + fields.why;
  return (
    <Page
      title={say("clean.tag_title")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", machine.machine);
      }}
      action={
        <>
          <NotSaved saving={saving} />
          <MainAction busy={saving.kind === "saving"} about={about} onPress={press}>
            {say("clean.begin")}
          </MainAction>
        </>
      }
    >
      <section class="stated">
        <TagFacts stated={held} />
      </section>
      <p>{say("clean.tag_text")}</p>
      <FateFields {...fate} />
    </Page>
  );
}

// One entry: all inputs as they were typed and the recipe as it was shown, nothing worked out anew.
import type { CalibrateSumpBody, MachineTyped } from "../../core/messages";
import { PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { SectionDrawing } from "../../elements/drawings/section";
import { hasPlan, isWhole, type CheckEntry, type ToldEntry } from "../../store/log/entry";
import { deedById, entryById, load } from "../../store/log/journal";
import { machineById } from "../../store/log/machines";
import { levelChangeWord, toldKindWord, waterWord, wayTitle } from "../../words/codes";
import { fieldFromPath } from "../../words/fields";
import { writeTyped } from "../../words/numbers";
import { say } from "../../words/say";
import { writeMoment } from "../../words/times";
import { Apart } from "../check/reading/apart";
import { isEmpty, storedRecipe } from "../check/recipe/chosen";
import { dipFacts } from "../check/dip/level";
import { onceInputs, partialInputs, PartialView } from "../check/without/partial";
import { readingFacts } from "../check/reading/readingfacts";
import { NothingView, RecipeView } from "../check/recipe/recipeview";
import { WayView } from "../check/recipe/wayview";
import { writeCode } from "../code/written";
import { AmendedPart, AmendLinks } from "../correct/marks";
import { PouredPart } from "../correct/poured";
import { address, back } from "../route";
import { machineFacts, type Fact } from "../setup/facts";
import { hasSlip } from "../sheets/slip";
import { DeedEntryScreen } from "./deed";
import { lookFacts } from "./lookfacts";
import { Facts, Versions, When } from "./parts";
import { toldFacts, toldText } from "../told/sentence";

/** As the gate names it: path, number, unit, and the code of what was asked. */
function keptText(kept: string): string {
  const [path = "", text = "", ...rest] = kept.split(" ");
  const unit = rest.filter((word) => !word.includes("_")).join(" ") || "1";
  return `${fieldFromPath(path).name} ${writeTyped({ text, unit })}`;
}

/** What a person said beside what was measured. */
function saidFacts({
  despite,
  level_change: level,
  topped_up_with: water,
  shown,
}: CheckEntry): readonly Fact[] {
  const { kept = [] } = shown as { readonly kept?: readonly string[] };
  const tag = despite === undefined ? undefined : entryById(despite);
  return [
    ...(level === undefined ? [] : [[say("since.answer"), levelChangeWord(level)] as const]),
    ...(kept.length === 0 ? [] : [[say("entry.kept"), kept.map(keptText).join(", ")] as const]),
    ...(water === undefined ? [] : [[say("since.water_answer"), waterWord(water)] as const]),
    ...(despite === undefined
      ? []
      : [
          [
            say("tag.despite"),
            tag?.kind === "machine_state" ? toldText(tag) : say("tag.despite_gone"),
          ] as const,
        ]),
  ];
}

function inputsOf(entry: CheckEntry): readonly Fact[] {
  if (!isWhole(entry)) return partialInputs(entry);
  const { dip, reading, second, aim, machine } = entry.body;
  return [
    ...dipFacts(machine, dip),
    ...readingFacts(reading, second),
    [say("answers.aim"), writeTyped(aim ?? machine.target.aim)],
    ...onceInputs(entry.body),
  ];
}

function Recipe({ entry }: { readonly entry: CheckEntry }) {
  if (!isWhole(entry)) return <PartialView entry={entry} />;
  const { shown } = entry;
  const recipe = storedRecipe(entry);
  if (recipe === null || !hasPlan(shown)) {
    return (
      <SectionDrawing
        name={say("machine.drawing")}
        section={shown.assessment.section ?? null}
        fullWord={say("drawn.full")}
      />
    );
  }
  const machine = entry.body.machine;
  if (recipe.why !== null)
    return (
      <>
        <h2>{wayTitle(recipe.why)}</h2>
        <WayView result={shown} recipe={recipe} machine={machine} />
      </>
    );
  return isEmpty(recipe) ? (
    <NothingView result={shown} recipe={recipe} />
  ) : (
    <RecipeView result={shown} recipe={recipe} machine={machine} />
  );
}

/** What was given, row by row; what was left open in one sentence, not in a row for each. */
function MachineFacts({ machine }: { readonly machine: MachineTyped }) {
  const facts = machineFacts(machine);
  const isOpen = ([, value]: Fact): boolean => value === say("facts.not_given");
  const open = facts.filter(isOpen).map(([name]) => name);
  return (
    <>
      <Facts facts={facts.filter((fact) => !isOpen(fact))} />
      {open.length === 0 ? null : (
        <p class="note">{say("facts.left_open", { what: open.join("; ") })}</p>
      )}
    </>
  );
}

function SetUp({ machine, title }: { readonly machine: MachineTyped; readonly title: string }) {
  return (
    <section>
      <h2>{title}</h2>
      <MachineFacts machine={machine} />
    </section>
  );
}

/** The steps that the table was found from, as they were typed. */
function PourSteps({ test }: { readonly test: CalibrateSumpBody | undefined }) {
  if (test === undefined) return null;
  const steps = (test.steps ?? []).map(({ poured, depth, at }, i): Fact => [
    say("pours.step", { n: String(i + 1) }),
    [writeTyped(poured), writeTyped(depth), ...(at === undefined ? [] : [writeMoment(at)])].join(
      ", ",
    ),
  ]);
  return (
    <section>
      <h2>{say("pours.place")}</h2>
      <Facts facts={steps} />
    </section>
  );
}

function ToldEntryScreen({
  entry,
  onBack,
}: {
  readonly entry: ToldEntry;
  readonly onBack: () => void;
}) {
  const name = machineById(entry.machine)?.body.machine.name;
  return (
    <Page title={toldKindWord(entry.kind)} place={name} onBack={onBack}>
      <p>{writeMoment(entry.measured_at)}</p>
      <AmendedPart entry={entry} />
      <Facts facts={toldFacts(entry)} />
      <AmendLinks entry={entry} />
      <Versions entry={entry} />
    </Page>
  );
}

/** What the page showed at first, where the numbers were corrected since: readable, and not the last one. */
function ShownAtFirst({ entry }: { readonly entry: CheckEntry }) {
  const was = entry.amended?.was;
  if (was?.kind !== "check" || entry.amended?.said === undefined) return null;
  const first: CheckEntry = { ...was, place: entry.place, strand: entry.strand, earlier: [] };
  return (
    <details class="fold">
      <summary>
        <span class="fold-word">{say("amend.at_first")}</span>
      </summary>
      <Facts facts={[...inputsOf(first), ...lookFacts(first)]} />
      <Recipe entry={first} />
    </details>
  );
}

export function EntryScreen({ id }: { readonly id: string }) {
  const entry = entryById(id);
  const deed = entry === undefined ? deedById(id) : undefined;
  const onBack = (): void => {
    back("log");
  };
  if (deed !== undefined) return <DeedEntryScreen deed={deed} onBack={onBack} />;
  if (entry === undefined) {
    const text = load.value.kind === "reading" ? say("machines.reading") : say("entry.missing");
    return (
      <Page title={say("log.title")} onBack={onBack}>
        <p>{text}</p>
      </Page>
    );
  }
  if (entry.kind !== "machine" && entry.kind !== "check")
    return <ToldEntryScreen entry={entry} onBack={onBack} />;
  const { machine } = entry.body;
  if (entry.kind === "machine") {
    return (
      <Page title={say("log.set_up")} place={machine.name} onBack={onBack}>
        <When entry={entry} />
        {entry.code === undefined ? null : (
          <p>{say("machine.code", { code: writeCode(entry.code) })}</p>
        )}
        <MachineFacts machine={machine} />
        <PourSteps test={entry.pour_test} />
        <Versions entry={entry} />
      </Page>
    );
  }
  return <CheckEntryScreen entry={entry} onBack={onBack} />;
}

function CheckEntryScreen({
  entry,
  onBack,
}: {
  readonly entry: CheckEntry;
  readonly onBack: () => void;
}) {
  const { machine } = entry.body;
  return (
    <Page title={say("entry.check")} place={machine.name} onBack={onBack}>
      <When entry={entry} />
      <AmendedPart entry={entry} />
      <section>
        <h2>{say("entry.typed")}</h2>
        <Facts facts={[...inputsOf(entry), ...lookFacts(entry), ...saidFacts(entry)]} />
      </section>
      {isWhole(entry) && hasPlan(entry.shown) ? <Apart result={entry.shown} /> : null}
      <Recipe entry={entry} />
      {hasSlip(entry) ? (
        <PlaceLink to={address("log", entry.id, "slip")}>{say("print.slip_link")}</PlaceLink>
      ) : null}
      <AmendLinks entry={entry} />
      <ShownAtFirst entry={entry} />
      <PouredPart check={entry} />
      <SetUp machine={machine} title={say("entry.set_up")} />
      <Versions entry={entry} />
    </Page>
  );
}

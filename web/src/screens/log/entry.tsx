// One entry: all inputs as they were typed and the recipe as it was shown, nothing worked out anew.
import type { CalibrateSumpBody, MachineTyped } from "../../core/messages";
import { PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { SectionDrawing } from "../../elements/section";
import { hasPlan, isWhole, type CheckEntry, type Entry, type ToldEntry } from "../../store/entry";
import { entryById, load, machineById } from "../../store/journal";
import { levelChangeWord, toldKindWord, waterWord, wayTitle } from "../../words/codes";
import { writeTyped } from "../../words/numbers";
import { say } from "../../words/say";
import { writeMoment } from "../../words/times";
import { Apart } from "../check/apart";
import { isEmpty, storedRecipe } from "../check/chosen";
import { dipFacts } from "../check/level";
import { onceInputs, partialInputs, PartialView } from "../check/partial";
import { readingFacts } from "../check/readingfacts";
import { NothingView, RecipeView } from "../check/recipeview";
import { WayView } from "../check/wayview";
import { writeCode } from "../code/written";
import { address, back } from "../route";
import { machineFacts, type Fact } from "../setup/facts";
import { hasSlip } from "../sheets/slip";
import { toldFacts, toldText } from "../told/sentence";

export function Facts({ facts }: { readonly facts: readonly Fact[] }) {
  return (
    <dl class="fact-list">
      {facts.map(([name, value]) => (
        <div key={name} class="fact-row">
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

/** What a person said beside what was measured. */
function saidFacts({
  despite,
  level_change: level,
  topped_up_with: water,
}: CheckEntry): readonly Fact[] {
  const tag = despite === undefined ? undefined : entryById(despite);
  return [
    ...(level === undefined ? [] : [[say("since.answer"), levelChangeWord(level)] as const]),
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

function SetUp({ machine, title }: { readonly machine: MachineTyped; readonly title: string }) {
  return (
    <section>
      <h2>{title}</h2>
      <Facts facts={machineFacts(machine)} />
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

function Versions({ entry }: { readonly entry: Entry }) {
  const blanks = {
    number: String(entry.seq),
    build: entry.versions.build,
    pycore: entry.versions.pycore,
  };
  return <p class="note versions">{say("entry.versions", blanks)}</p>;
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
      <Facts facts={toldFacts(entry)} />
      <Versions entry={entry} />
    </Page>
  );
}

export function EntryScreen({ id }: { readonly id: string }) {
  const entry = entryById(id);
  const onBack = (): void => {
    back("log");
  };
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
        <p>{writeMoment(entry.measured_at)}</p>
        {entry.code === undefined ? null : (
          <p>{say("machine.code", { code: writeCode(entry.code) })}</p>
        )}
        <Facts facts={machineFacts(machine)} />
        <PourSteps test={entry.pour_test} />
        <Versions entry={entry} />
      </Page>
    );
  }
  return (
    <Page title={say("entry.check")} place={machine.name} onBack={onBack}>
      <p>{writeMoment(entry.measured_at)}</p>
      <section>
        <h2>{say("entry.typed")}</h2>
        <Facts facts={[...inputsOf(entry), ...saidFacts(entry)]} />
      </section>
      {isWhole(entry) && hasPlan(entry.shown) ? <Apart result={entry.shown} /> : null}
      <Recipe entry={entry} />
      {hasSlip(entry) ? (
        <PlaceLink to={address("log", entry.id, "slip")}>{say("print.slip_link")}</PlaceLink>
      ) : null}
      <SetUp machine={machine} title={say("entry.set_up")} />
      <Versions entry={entry} />
    </Page>
  );
}

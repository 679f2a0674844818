// One machine: where it stood last, and the ways on from here.
import { MainAction, PlaceLink } from "../elements/buttons";
import { Page } from "../elements/page";
import { SectionDrawing } from "../elements/drawings/section";
import { StateMark } from "../elements/statemark";
import { cleaningOf } from "../store/underway/cleaning";
import { type CheckEntry, type MachineEntry } from "../store/log/entry";
import { codeOf } from "../store/log/codes";
import { isGivenUp } from "../store/log/deeds";
import { isResting, lastCheck } from "../store/log/machines";
import { hasPours } from "../store/underway/pours";
import { write } from "../words/numbers";
import { say } from "../words/say";
import { writeMoment } from "../words/times";
import { storedRecipe } from "./check/recipe/chosen";
import { CleanOutDue } from "./clean/due";
import { drainedAt } from "./clean/stopped";
import { ModeSwitch } from "./check/modeswitch";
import { isReadingOpen } from "./check/without/partial";
import { firstPlace } from "./check/place";
import { writeCode } from "./code/written";
import { checkDueWords, useDueChecks } from "./due";
import { CoreTrouble } from "./foot";
import { MishapLink } from "./mishap/link";
import { isOfBefore } from "./poured";
import { address, back, go } from "./route";
import { stateOf } from "./state";
import { checkWord, nextAt, Tasks } from "./tasks";
import { Stated } from "./told/stated";

/** Filled up without a reading: until somebody reads it, that is what there is to do here. */
function OpenReading({ check }: { readonly check: CheckEntry }) {
  return (
    <section class="task">
      <h2>{say("machine.open")}</h2>
      <p>{say("machine.open_text", { time: writeMoment(check.measured_at) })}</p>
    </section>
  );
}

function expected(check: CheckEntry, strength: string): string {
  return isGivenUp(check.id) ? say("machine.given_up") : say("machine.recipe", { strength });
}

function LastCheck({ check, due }: { readonly check: CheckEntry; readonly due: string | null }) {
  const { assessment } = check.shown;
  const recipe = storedRecipe(check);
  const depth = assessment.level?.shown.depth;
  const strength = assessment.strength?.shown.strength;
  const facts = [
    depth === undefined ? null : say("machine.depth", { depth: write(depth) }),
    strength === undefined ? null : say("machine.strength", { strength: write(strength) }),
    recipe === null ? null : expected(check, write(recipe.strength)),
  ].filter((fact): fact is string => fact !== null);
  const isEmptied = drainedAt(check.machine) !== undefined;
  const isBefore = isOfBefore(check) ? "machine.last_before" : "machine.last";
  const title = isEmptied ? "machine.last_emptied" : isBefore;
  return (
    <section class="last-check">
      <h2>{say(title, { time: writeMoment(check.measured_at) })}</h2>
      <StateMark state={stateOf(check)} />
      {due === null ? null : <p class="machine-due">{due}</p>}
      {assessment.section === undefined ? null : (
        <SectionDrawing
          name={say("machine.drawing")}
          section={assessment.section}
          fullWord={say("drawn.full")}
        />
      )}
      <ul class="facts">
        {facts.map((fact) => (
          <li key={fact}>{fact}</li>
        ))}
      </ul>
    </section>
  );
}

/** A look at a machine writes nothing: a code is given where it is asked for or printed. */
function Code({ machine }: { readonly machine: MachineEntry }) {
  const code = codeOf(machine.machine);
  if (code !== undefined) return <p>{say("machine.code", { code: writeCode(code) })}</p>;
  return (
    <PlaceLink to={address("machines", machine.machine, "code")}>
      {say("machine.no_code")}
    </PlaceLink>
  );
}

/** What else can be done here. */
function Places({ machine }: { readonly machine: MachineEntry }) {
  const id = machine.machine;
  return (
    <nav class="place-list" aria-label={say("machine.places")}>
      <MishapLink machine={id} sign />
      {nextAt(id).kind === "check" ? null : (
        <PlaceLink to={address("machines", id, firstPlace(id))}>{checkWord(id)}</PlaceLink>
      )}
      <PlaceLink to={address("machines", id, "tell")}>{say("tell.title")}</PlaceLink>
      <PlaceLink to={address("machines", id, "log")}>{say("log.open")}</PlaceLink>
      <PlaceLink to={address("machines", id, "trend")}>{say("trend.title")}</PlaceLink>
      <PlaceLink to={address("machines", id, "set-up", "check")}>{say("machine.change")}</PlaceLink>
      <PlaceLink to={address("machines", id, "set-up", "pours")}>
        {hasPours(id) ? say("pours.go_on") : say("pours.title")}
      </PlaceLink>
      {nextAt(id).kind === "clean_out" ? null : (
        <PlaceLink to={address("machines", id, "clean-out")}>
          {say(cleaningOf(id).value === null ? "clean.title" : "clean.go_on")}
        </PlaceLink>
      )}
      <PlaceLink to={address("machines", id, "print")}>{say("print.title")}</PlaceLink>
      <PlaceLink to={address("machines", id, "hand-over")}>{say("onemachine.title")}</PlaceLink>
      <Code machine={machine} />
    </nav>
  );
}

export function MachineScreen({ machine }: { readonly machine: MachineEntry }) {
  const check = lastCheck(machine.machine);
  const due = useDueChecks().get(machine.machine);
  const id = machine.machine;
  const next = nextAt(id);
  return (
    <Page
      title={machine.body.machine.name}
      place={say("app.name")}
      stays
      onBack={() => {
        back();
      }}
      action={
        <MainAction
          onPress={() => {
            go("machines", id, next.place);
          }}
          about={next.kind}
        >
          {next.word}
        </MainAction>
      }
    >
      <Stated machine={machine} />
      <Tasks machine={id} check={check} />
      {check !== undefined && isReadingOpen(check) && !isResting(id) ? (
        <OpenReading check={check} />
      ) : null}
      <CleanOutDue machine={id} due={due} />
      {check === undefined ? (
        <p>{say("machine.never")}</p>
      ) : (
        <LastCheck check={check} due={checkDueWords(due)} />
      )}
      <Places machine={machine} />
      <ModeSwitch />
      <CoreTrouble />
    </Page>
  );
}

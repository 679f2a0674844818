// The list: every machine with its state and the time of its last check.
import { useEffect } from "preact/hooks";
import { MainAction, OtherAction, PlaceLink } from "../elements/buttons";
import { EmptySump } from "../elements/drawings/emptysump";
import { Page } from "../elements/page";
import { Safe } from "../elements/safe";
import { opened, readJournal } from "../store/log/journal";
import { isResting, lastCheck, machines } from "../store/log/machines";
import type { MachineEntry } from "../store/log/entry";
import { isStarted, walkOf } from "../store/underway/walk";
import { isExample } from "../store/phone/which";
import { isKey, say } from "../words/say";
import { HandoverLink } from "./backup/handover";
import { MissingAlarm } from "./backup/missing";
import { BackupLink, BackupStanding } from "./backup/standing";
import { isReadingOpen } from "./check/without/partial";
import { firstPlace } from "./check/place";
import { dueWords, useDueChecks, type DueChecks } from "./due";
import { isBeingCleaned } from "./clean/underway";
import { ExampleLink } from "./example/example";
import { Foot } from "./foot";
import { StateNow } from "./poured";
import { address, go, replace } from "./route";
import { InstallNote } from "./settings/install";
import { isWanted, nextAt, pressing, TaskLines } from "./tasks";
import { StatedLine } from "./told/stated";

function Row({
  machine,
  due,
}: {
  readonly machine: MachineEntry;
  readonly due: readonly string[];
}) {
  const check = lastCheck(machine.machine);
  const underWay = isStarted(walkOf(machine.machine).value);
  return (
    <li>
      <a class="machine-row" href={address("machines", machine.machine)}>
        <span class="machine-name">{machine.body.machine.name}</span>
        <StatedLine machine={machine.machine} />
        <StateNow machine={machine.machine} />
        {underWay ? <span class="machine-due">{say("machines.under_way")}</span> : null}
        {isReadingOpen(check) && !isResting(machine.machine) ? (
          <span class="machine-due">{say("machine.open")}</span>
        ) : null}
        {due.map((words) => (
          <span key={words} class="machine-due">
            {words}
          </span>
        ))}
        <TaskLines machine={machine.machine} />
      </a>
    </li>
  );
}

/** For a check from elsewhere whose state cannot be drawn. */
function BareRow({ machine }: { readonly machine: MachineEntry }) {
  return (
    <li>
      <a class="machine-row" href={address("machines", machine.machine)}>
        <span class="machine-name">{machine.body.machine.name}</span>
      </a>
    </li>
  );
}

/** The lower, the earlier: at rest or not, what presses, a check under way, an open reading, the last check. */
function ranksOf({ machine }: MachineEntry): readonly number[] {
  const check = lastCheck(machine);
  return [
    isResting(machine) && !isBeingCleaned(machine) ? 1 : 0,
    pressing(machine),
    isStarted(walkOf(machine).value) ? 0 : 1,
    isReadingOpen(check) ? 0 : 1,
    check === undefined ? 0 : Date.parse(check.wall),
  ];
}

/** Machines at rest last, but for a clean-out that goes on here; what is held first, then open pours first, then due readings, checks under way, open readings, oldest checks, names. */
function inOrder(list: readonly MachineEntry[]): readonly MachineEntry[] {
  const ranks = new Map(list.map((machine) => [machine, ranksOf(machine)]));
  const compare = (a: MachineEntry, b: MachineEntry): number => {
    const others = ranks.get(b) ?? [];
    const differences = (ranks.get(a) ?? []).map((rank, i) => rank - (others[i] ?? 0));
    return differences.find((one) => one !== 0) ?? 0;
  };
  return [...list].sort(
    (a, b) => compare(a, b) || a.body.machine.name.localeCompare(b.body.machine.name),
  );
}

function latestUsed(list: readonly MachineEntry[]): MachineEntry | undefined {
  const last = (machine: MachineEntry): number =>
    lastCheck(machine.machine)?.place ?? machine.place;
  const rests = (machine: MachineEntry): number => Number(isResting(machine.machine));
  return [...list].sort((a, b) => rests(a) - rests(b) || last(b) - last(a))[0];
}

/**
 * What was begun or is due at the machine used last, then a clean-out that goes on here, then the check that is
 * overdue longest.
 */
function offered(list: readonly MachineEntry[], due: DueChecks): MachineEntry | undefined {
  const used = latestUsed(list);
  if (used === undefined || isWanted(used.machine)) return used;
  const cleaned = list.find(({ machine }) => isBeingCleaned(machine));
  if (cleaned !== undefined) return cleaned;
  const overdue = list.flatMap((machine) => {
    const check = due.get(machine.machine);
    return check?.due === true && check.due_s !== undefined
      ? [{ machine, due_s: check.due_s }]
      : [];
  });
  return overdue.sort((a, b) => a.due_s - b.due_s)[0]?.machine ?? used;
}

function NothingYet() {
  return (
    <Page
      title={say("machines.title")}
      stays
      action={
        <MainAction
          onPress={() => {
            go("machines", "new", "name");
          }}
        >
          {say("machines.add_first")}
        </MainAction>
      }
    >
      <MissingAlarm />
      <EmptySump />
      <p>{say("machines.empty")}</p>
      <PlaceLink to={address("take-in")}>{say("machines.used_before")}</PlaceLink>
      <ExampleLink />
      <PlaceLink to={address("learn")}>{say("learn.title")}</PlaceLink>
      <InstallNote />
      <PlaceLink to={address("settings")}>{say("settings.title")}</PlaceLink>
      <Foot />
    </Page>
  );
}

function Unread() {
  const state = opened.value;
  if (state.kind !== "failed")
    return (
      <Page title={say("machines.title")}>
        <p role="status">{say("machines.reading")}</p>
      </Page>
    );
  const key = `store.${state.trouble}`;
  return (
    <Page title={say("store.title")}>
      <p>{isKey(key) ? say(key) : say("store.other")}</p>
      <OtherAction
        onPress={() => {
          void readJournal();
        }}
      >
        {say("again")}
      </OtherAction>
    </Page>
  );
}

/** The app icon's own way to a check: it leads on once the log is read. */
export function StartCheck() {
  const isRead = opened.value.kind === "ready";
  const used = latestUsed(machines.value);
  useEffect(() => {
    if (!isRead) return;
    if (used === undefined) replace();
    else replace("machines", used.machine, firstPlace(used.machine));
  }, [isRead]);
  return isRead ? null : <Unread />;
}

export function MachinesScreen() {
  const due = useDueChecks();
  if (opened.value.kind !== "ready") return <Unread />;
  const list = machines.value;
  const first = offered(list, due);
  if (first === undefined) return <NothingYet />;
  const next = nextAt(first.machine);
  const start = () => {
    go("machines", first.machine, next.place);
  };
  const name = first.body.machine.name;
  return (
    <Page title={say("machines.title")}>
      <MissingAlarm />
      <ul class="machine-list">
        {inOrder(list).map((machine) => (
          <Safe key={machine.machine} instead={<BareRow machine={machine} />}>
            <Row machine={machine} due={dueWords(due.get(machine.machine))} />
          </Safe>
        ))}
      </ul>
      <div class="list-action actions-stay">
        <MainAction onPress={start} about={`${next.kind} ${first.machine}`}>
          {say("machines.next", { what: next.word, name })}
        </MainAction>
      </div>
      <InstallNote />
      {isExample ? null : <BackupStanding />}
      <nav class="place-list" aria-label={say("machines.places")}>
        <PlaceLink to={address("machines", "new", "name")}>{say("machines.add")}</PlaceLink>
        <PlaceLink to={address("code")}>{say("code.title")}</PlaceLink>
        <PlaceLink to={address("log")}>{say("log.open")}</PlaceLink>
        <PlaceLink to={address("learn")}>{say("learn.title")}</PlaceLink>
        <BackupLink />
        <HandoverLink />
        <PlaceLink to={address("settings")}>{say("settings.title")}</PlaceLink>
      </nav>
      <Foot />
    </Page>
  );
}

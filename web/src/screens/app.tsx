// Which screen stands at which place, and what is shown when a screen breaks.
import type { ComponentChildren } from "preact";
import { useEffect } from "preact/hooks";
import { OtherAction } from "../elements/buttons";
import { Page } from "../elements/page";
import { Patterns } from "../elements/drawings/patterns";
import { Safe } from "../elements/safe";
import { isAsked } from "../store/written/despite";
import { opened } from "../store/log/journal";
import { heldOf, machineById } from "../store/log/machines";
import { SEVERAL } from "../store/phone/handed";
import { isExample } from "../store/phone/which";
import { recalled } from "../store/underway/drafts";
import { say } from "../words/say";
import { BackupScreen } from "./backup/backup";
import { HandoverScreen } from "./backup/handover";
import { MissingScreen } from "./backup/missing";
import { CameraScreen } from "./backup/camera";
import { OneMachineScreen } from "./backup/onemachine";
import { ShowScreen } from "./backup/show";
import { TableScreen } from "./backup/table";
import { TakeInScreen } from "./backup/takein";
import { PourScreen } from "./check/pour/screen";
import { RecheckScreen } from "./check/recheck/screen";
import { CheckScreen } from "./check/screen";
import { HeldScreen } from "./check/held";
import { LookScreen } from "./check/look/screen";
import { ClaimedScreen } from "./claimed/screen";
import { CleanOutScreen } from "./clean/screen";
import { CodeOfMachine } from "./code/shown";
import { CodeScreen } from "./code/type";
import { AMENDING, AmendScreen } from "./correct/screen";
import { ExampleBar, NotInExample } from "./example/example";
import { LogScreen } from "./log/list";
import { EntryScreen } from "./log/entry";
import { LearnScreen } from "./learn/screen";
import { MachineScreen } from "./machine";
import { MachinesScreen, StartCheck } from "./machines";
import { MishapScreen } from "./mishap/screen";
import { replace, route } from "./route";
import { AboutScreen, LicencesScreen } from "./settings/about";
import { InstallScreen } from "./settings/install";
import { SettingsScreen } from "./settings/settings";
import { SetupScreen } from "./setup/screen";
import { SheetsScreen } from "./sheets/ofmachine";
import { CareScreen } from "./shop/care";
import { LimitsScreen } from "./shop/limits";
import { WhoScreen } from "./shop/who";
import { PracticeScreen } from "./practice/screen";
import { PrintScreen } from "./sheets/screen";
import { SlipScreen } from "./sheets/slip";
import { TellNote } from "./told/others";
import { TellScreen, ToldScreen } from "./told/screen";
import { TrendScreen } from "./trend/screen";

/** A place that is not there leads to the list instead of to an empty page. */
function Elsewhere() {
  useEffect(() => {
    replace();
  }, []);
  return null;
}

function MachinePlace({
  id,
  place,
  rest,
}: {
  readonly id: string;
  readonly place: string | undefined;
  readonly rest: readonly string[];
}) {
  const machine = machineById(id);
  // Until the log is read, nobody knows whether the machine is there.
  if (machine === undefined) return opened.value.kind === "reading" ? null : <Elsewhere />;
  // Who has seen the tag is not asked again; what was saved is only looked at.
  const held = isAsked(id) ? (heldOf(id) ?? null) : null;
  if (place === undefined) return <MachineScreen machine={machine} />;
  if (place === "hand-over" && isExample) return <NotInExample />;
  if (place === "hand-over" && rest[0] === "show") return <ShowScreen key={id} machine={machine} />;
  if (place === "hand-over") return <OneMachineScreen key={id} machine={machine} />;
  if (place === "pour") return <PourScreen key={id} machine={machine} parts={rest} />;
  if (place === "recheck") return <RecheckScreen key={id} machine={machine} parts={rest} />;
  if (place === "wrong") return <MishapScreen key={id} machine={machine} parts={rest} />;
  if (place === "look" && held !== null) return <HeldScreen machine={machine} held={held} />;
  if (place === "look") return <LookScreen key={id} machine={machine} parts={rest} />;
  if (place === "log") return <LogScreen machine={machine} />;
  if (place === "clean-out") return <CleanOutScreen key={id} machine={machine} parts={rest} />;
  if (place === "trend") return <TrendScreen key={id} machine={machine} />;
  if (place === "tell") return <TellScreen machine={machine} what={rest[0]} />;
  if (place === "told") return <ToldScreen machine={machine} id={rest[0] ?? ""} />;
  if (place === "print") return <SheetsScreen machine={machine} parts={rest} />;
  if (place === "code") return <CodeOfMachine machine={machine} />;
  if (place === "set-up") return <SetupScreen key={id} machine={machine} parts={rest} />;
  if (held !== null && place !== "saved") return <HeldScreen machine={machine} held={held} />;
  return <CheckScreen key={id} machine={machine} parts={[place, ...rest]} />;
}

function LogPlace({ parts: [id, place, ...rest] }: { readonly parts: readonly string[] }) {
  if (id === undefined) return <LogScreen />;
  if (id === "claimed")
    return <ClaimedScreen parts={[place, ...rest].filter((part) => part !== undefined)} />;
  if (place !== undefined && AMENDING.includes(place))
    return <AmendScreen key={id} id={id} parts={[place, ...rest]} />;
  return place === "slip" ? <SlipScreen id={id} /> : <EntryScreen id={id} />;
}
const ASIDE: Readonly<Record<string, () => ComponentChildren>> = {
  missing: () => <MissingScreen />,
  backup: () => <BackupScreen />,
  "take-in": () => <TakeInScreen />,
  handover: () => <HandoverScreen />,
  table: () => <TableScreen />,
  limits: () => <LimitsScreen />,
  care: () => <CareScreen />,
  who: () => <WhoScreen />,
  check: () => <StartCheck />,
  settings: () => <SettingsScreen />,
  about: () => <AboutScreen />,
  licences: () => <LicencesScreen />,
  install: () => <InstallScreen />,
};

/** Places through which entries leave the phone or come in: the example has no part in them. */
const LEAVES_THE_PHONE: ReadonlySet<string> = new Set(["backup", "take-in", "table", "code"]);

function Place() {
  const [first, second, third, ...rest] = route.value.parts;
  if (first === undefined) return <MachinesScreen />;
  // A page that takes up a draft before it is whole would go on from an older one.
  if (!recalled.value) return null;
  if (isExample && LEAVES_THE_PHONE.has(first)) return <NotInExample />;
  if (first === "take-in" && second === "camera") return <CameraScreen />;
  if (first === "take-in" && second === SEVERAL) return <TakeInScreen isSeveral />;
  const aside = Object.hasOwn(ASIDE, first) ? ASIDE[first] : undefined;
  if (aside !== undefined) return <>{aside()}</>;
  if (first === "tell") return <TellNote machine={null} />;
  if (first === "told") return <ToldScreen machine={null} id={second ?? ""} />;
  if (first === "log") return <LogPlace parts={route.value.parts.slice(1)} />;
  if (first === "learn") return <LearnScreen card={second} at={third} />;
  if (first === "practice") return <PracticeScreen place={second} />;
  if (first === "code") return <CodeScreen key={second ?? ""} scanned={second ?? ""} />;
  if (first === "print")
    return <PrintScreen parts={[second, third].filter((part) => part !== undefined)} />;
  if (first !== "machines" || second === undefined) return <Elsewhere />;
  // Nothing that is typed there could be kept.
  if (second === "new" && opened.value.kind === "failed") return <MachinesScreen />;
  if (second === "new")
    return (
      <SetupScreen key="new" machine={null} parts={third === undefined ? [] : [third, ...rest]} />
    );
  return <MachinePlace id={second} place={third} rest={rest} />;
}

function Stopped() {
  return (
    <Page title={say("broken.title")}>
      <p>{say("broken.text")}</p>
      <OtherAction
        onPress={() => {
          location.reload();
        }}
      >
        {say("again")}
      </OtherAction>
    </Page>
  );
}

export function App() {
  return (
    <Safe instead={<Stopped />}>
      <Patterns />
      <ExampleBar />
      <Place />
    </Safe>
  );
}

// Which app this is: its build, since when it is on this phone, what it works with, and what it stands on.
import { useEffect, useState } from "preact/hooks";
import { PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { reason, updateFailedOn } from "../../offline";
import { buildSince } from "../../store/phone/build";
import { say } from "../../words/say";
import { writeDay } from "../../words/times";
import { useResult } from "../core";
import { readyKey } from "../foot";
import { Facts } from "../log/parts";
import { address, back } from "../route";
import type { Fact } from "../setup/facts";

function ThisApp() {
  const calculator = useResult("describe", {});
  const waiting = say("about.waiting");
  const since = buildSince();
  const failedOn = updateFailedOn.value;
  const rows: readonly Fact[] = [
    [say("about.build"), __BUILD_ID__],
    ...(since === null ? [] : [[say("about.since"), writeDay(since)] as const]),
    [say("about.calculator"), calculator?.pycore ?? waiting],
    [say("about.python"), calculator?.python ?? waiting],
    [say("about.pyodide"), __PYTHON__.pyodide],
    [say("about.offline"), say(readyKey())],
    ...(reason.value === "" ? [] : [[say("about.diagnosis"), reason.value] as const]),
    ...(failedOn === "" ? [] : [[say("about.update_failed"), failedOn] as const]),
  ];
  return (
    <div class="about-facts">
      <Facts facts={rows} />
    </div>
  );
}

export function AboutScreen() {
  return (
    <Page
      title={say("about.title")}
      onBack={() => {
        back("settings");
      }}
    >
      <p>{say("about.text")}</p>
      <p>{say("about.advice")}</p>
      <ThisApp />
      <div class="places">
        <PlaceLink to={address("licences")}>{say("about.licences")}</PlaceLink>
      </div>
    </Page>
  );
}

interface Licence {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
}

/** Null while they are read, empty where they cannot be. */
function useLicences(): readonly Licence[] | null {
  const [list, setList] = useState<readonly Licence[] | null>(null);
  useEffect(() => {
    fetch("./licences.json")
      .then((reply) => reply.json() as Promise<Licence[]>)
      .then(setList)
      .catch(() => {
        setList([]);
      });
  }, []);
  return list;
}

export function LicencesScreen() {
  const list = useLicences();
  return (
    <Page
      title={say("about.licences")}
      onBack={() => {
        back("about");
      }}
    >
      <p class="note">
        {list?.length === 0 ? say("about.licences_lost") : say("about.licences_text")}
      </p>
      {(list ?? []).map(({ name, version, licence, text }) => (
        <details class="licence" key={name}>
          <summary>
            <b>{name}</b> {version} {licence}
          </summary>
          <pre lang="en">{text}</pre>
        </details>
      ))}
    </Page>
  );
}

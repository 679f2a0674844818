// Why and how the app goes on the home screen. Shown from the list until somebody has read it, and from
// the settings at any time.
import { useState } from "preact/hooks";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { readSetting, writeSetting } from "../../store/phone/settings";
import { isExample } from "../../store/phone/which";
import { say, type Key } from "../../words/say";
import { address, back } from "../route";

const READ = "install-read";
const WAYS: readonly (readonly [Key, readonly Key[]])[] = [
  ["install.iphone", ["install.iphone_1", "install.iphone_2", "install.iphone_3"]],
  ["install.android", ["install.android_1", "install.android_2"]],
];

function isOnHomeScreen(): boolean {
  const isOwnWindow = matchMedia("(display-mode: standalone)").matches;
  return isOwnWindow || (navigator as { standalone?: boolean }).standalone === true;
}

export function InstallNote() {
  const [isNeeded] = useState(() => !isExample && !isOnHomeScreen() && readSetting(READ) === null);
  return isNeeded ? <PlaceLink to={address("install")}>{say("install.note")}</PlaceLink> : null;
}

export function InstallScreen() {
  return (
    <Page
      title={say("install.title")}
      onBack={() => {
        back();
      }}
      action={
        <MainAction
          onPress={() => {
            writeSetting(READ, "yes");
            back();
          }}
        >
          {say("install.done")}
        </MainAction>
      }
    >
      <p>{say("install.why")}</p>
      <p>{say("install.first")}</p>
      {WAYS.map(([title, steps]) => (
        <section key={title} class="settings-part">
          <h2>{say(title)}</h2>
          <ol class="do-steps">
            {steps.map((step) => (
              <li key={step}>{say(step)}</li>
            ))}
          </ol>
        </section>
      ))}
      <p class="note">{say("install.backup")}</p>
    </Page>
  );
}

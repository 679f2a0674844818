// Settings: language and theme of the whole app, and the ways to what is set elsewhere.
import { useState } from "preact/hooks";
import { PlaceLink } from "../../elements/buttons";
import { Choice } from "../../elements/fields/choice";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { keepingKey } from "../../store/log/keeping";
import { isExample } from "../../store/phone/which";
import { chosenTheme, keepTheme, THEMES, type Theme } from "../../style/theme";
import { chosenLanguage, keepLanguage, LANGUAGES, type Language } from "../../words/language";
import { say } from "../../words/say";
import { BackupLink } from "../backup/standing";
import { address, back } from "../route";

/** Sentences are kept by many screens from the start, so a language begins with a fresh page. */
function speakFromNow(language: Language): boolean {
  if (language === chosenLanguage()) return true;
  if (!keepLanguage(language)) return false;
  location.reload();
  return true;
}

function LanguageChoice({ onLost }: { readonly onLost: (isLost: boolean) => void }) {
  return (
    <section class="settings-part">
      <h2 id="language">{say("settings.language")}</h2>
      <p class="note">{say("settings.language_note")}</p>
      <Choice<Language>
        name="language"
        labelledBy="language"
        options={LANGUAGES.map((value) => ({ value, word: say(`language.${value}`) }))}
        chosen={chosenLanguage()}
        onChoose={(language) => {
          onLost(!speakFromNow(language));
        }}
      />
    </section>
  );
}

function ThemeChoice({ onLost }: { readonly onLost: (isLost: boolean) => void }) {
  const [theme, setTheme] = useState<Theme>(chosenTheme);
  return (
    <section class="settings-part">
      <h2 id="theme">{say("settings.theme")}</h2>
      <Choice<Theme>
        name="theme"
        labelledBy="theme"
        options={THEMES.map((value) => ({ value, word: say(`theme.${value}`) }))}
        chosen={theme}
        onChoose={(chosen) => {
          setTheme(chosen);
          onLost(!keepTheme(chosen));
        }}
      />
    </section>
  );
}

export function SettingsScreen() {
  const [isLost, setLost] = useState(false);
  return (
    <Page
      title={say("settings.title")}
      onBack={() => {
        back();
      }}
    >
      {isLost ? <Fault>{say("settings.not_kept")}</Fault> : null}
      <LanguageChoice onLost={setLost} />
      <ThemeChoice onLost={setLost} />
      <section class="settings-part">
        <h2>{say("settings.units")}</h2>
        <p class="note">{say("settings.units_note")}</p>
      </section>
      <section class="settings-part">
        <h2>{say("settings.data")}</h2>
        <p class="note">{say(keepingKey())}</p>
        <div class="places">
          {isExample ? null : <BackupLink />}
          <PlaceLink to={address("install")}>{say("install.title")}</PlaceLink>
        </div>
      </section>
      <section class="settings-part">
        <h2>{say("settings.more")}</h2>
        <div class="places">
          <PlaceLink to={address("limits")}>{say("look.limits")}</PlaceLink>
          <PlaceLink to={address("about")}>{say("about.title")}</PlaceLink>
        </div>
      </section>
    </Page>
  );
}

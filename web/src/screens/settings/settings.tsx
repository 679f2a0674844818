// Settings of the whole app, and the ways to what is set elsewhere.
import { useState } from "preact/hooks";
import { PlaceLink } from "../../elements/buttons";
import { chosenSounds, click, keepSounds, SOUNDS, type Sounds } from "../../elements/click";
import { Choice } from "../../elements/fields/choice";
import { chosenKeys, keepKeys, KEYS, type Keys } from "../../elements/fields/keys";
import { TextField } from "../../elements/fields/textfield";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { keepingKey } from "../../store/log/keeping";
import { keepSignature, MOST_OF_NAME, signature } from "../../store/phone/name";
import { isExample } from "../../store/phone/which";
import {
  chosenSize,
  chosenTheme,
  keepSize,
  keepTheme,
  SIZES,
  THEMES,
  type Size,
  type Theme,
} from "../../style/theme";
import { chosenLanguage, keepLanguage, LANGUAGES, type Language } from "../../words/language";
import { say } from "../../words/say";
import { BackupLink } from "../backup/standing";
import { ModeSwitch } from "../check/modeswitch";
import { address, back } from "../route";

/** Sentences are kept by many screens from the start, so a language begins with a fresh page. */
function speakFromNow(language: Language): boolean {
  if (language === chosenLanguage()) return true;
  if (!keepLanguage(language)) return false;
  location.reload();
  return true;
}

interface PartProps<T extends string> {
  readonly name: string;
  readonly title: string;
  readonly note?: string;
  readonly options: readonly { readonly value: T; readonly word: string }[];
  readonly chosen: () => T;
  /** Returns false when the choice could not be kept. */
  readonly keep: (value: T) => boolean;
  readonly onLost: (isLost: boolean) => void;
}

/** One thing to choose, which holds from the tap on. */
function Part<T extends string>({
  name,
  title,
  note,
  options,
  chosen,
  keep,
  onLost,
}: PartProps<T>) {
  const [now, setNow] = useState<T>(chosen);
  return (
    <section class="settings-part">
      <h2 id={name}>{title}</h2>
      {note === undefined ? null : <p class="note">{note}</p>}
      <Choice<T>
        name={name}
        labelledBy={name}
        options={options}
        chosen={now}
        onChoose={(value) => {
          setNow(value);
          onLost(!keep(value));
        }}
      />
    </section>
  );
}

/** What the phone shows and says. */
function Shown({ onLost }: { readonly onLost: (isLost: boolean) => void }) {
  return (
    <>
      <Part<Language>
        name="language"
        title={say("settings.language")}
        note={say("settings.language_note")}
        options={LANGUAGES.map((value) => ({ value, word: say(`language.${value}`) }))}
        chosen={chosenLanguage}
        keep={speakFromNow}
        onLost={onLost}
      />
      <Part<Theme>
        name="theme"
        title={say("settings.theme")}
        options={THEMES.map((value) => ({ value, word: say(`theme.${value}`) }))}
        chosen={chosenTheme}
        keep={keepTheme}
        onLost={onLost}
      />
      <Part<Size>
        name="size"
        title={say("settings.size")}
        options={SIZES.map((value) => ({ value, word: say(`size.${value}`) }))}
        chosen={chosenSize}
        keep={keepSize}
        onLost={onLost}
      />
    </>
  );
}

/** What helps hands. */
function Handled({ onLost }: { readonly onLost: (isLost: boolean) => void }) {
  return (
    <>
      <Part<Keys>
        name="keys"
        title={say("settings.keys")}
        options={KEYS.map((value) => ({ value, word: say(`keys_of.${value}`) }))}
        chosen={chosenKeys}
        keep={keepKeys}
        onLost={onLost}
      />
      <Part<Sounds>
        name="sounds"
        title={say("settings.sounds")}
        note={say("settings.sounds_note")}
        options={SOUNDS.map((value) => ({ value, word: say(`sounds.${value}`) }))}
        chosen={chosenSounds}
        keep={(sounds) => {
          const isKept = keepSounds(sounds);
          click(1);
          return isKept;
        }}
        onLost={onLost}
      />
    </>
  );
}

function NameField({ onLost }: { readonly onLost: (isLost: boolean) => void }) {
  const [text, setText] = useState(signature);
  const name = text.trim();
  const isLong = name.length > MOST_OF_NAME;
  const blanks = { most: String(MOST_OF_NAME), got: String(name.length) };
  return (
    <TextField
      id="signature"
      label={say("settings.name")}
      hint={say("settings.name_hint")}
      number={false}
      text={text}
      fault={isLong ? say("settings.name_long", blanks) : undefined}
      onText={(typed) => {
        setText(typed);
        // One that is too long is not kept, and the one before still holds.
        if (typed.trim().length <= MOST_OF_NAME) onLost(!keepSignature(typed.trim()));
      }}
    />
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
      <Shown onLost={setLost} />
      <section class="settings-part">
        <h2>{say("settings.check")}</h2>
        <ModeSwitch />
        <NameField onLost={setLost} />
      </section>
      <Handled onLost={setLost} />
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

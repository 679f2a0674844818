// Entries that were stored on this phone and are not there any more: told on the first screen, with a
// page that says what can be done.
import { MainAction, OtherAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { goOnWithout, lacking } from "../../store/log/journal";
import type { Lack } from "../../store/log/lacking";
import { writeCount } from "../../words/numbers";
import { say, sayCount } from "../../words/say";
import { address, back, go, replace } from "../route";

function sentence({ found, count }: Lack): string {
  const blanks = { count: writeCount(count) };
  return found < count ? sayCount("missing.short", found, blanks) : say("missing.changed", blanks);
}

function Sentences() {
  return (
    <ul class="facts">
      {lacking.value.map((lack) => (
        <li key={lack.log}>{sentence(lack)}</li>
      ))}
    </ul>
  );
}

/** On the first screen, in front of everything else. */
export function MissingAlarm() {
  if (lacking.value.length === 0) return null;
  return (
    <section class="alarm" role="alert">
      <h2>{say("missing.title")}</h2>
      <Sentences />
      <PlaceLink to={address("missing")}>{say("missing.open")}</PlaceLink>
    </section>
  );
}

/** Who comes back here by an address when all is there again. */
function NothingMissing({ onBack }: { readonly onBack: () => void }) {
  return (
    <Page
      title={say("missing.none")}
      onBack={onBack}
      action={<MainAction onPress={onBack}>{say("takein.back")}</MainAction>}
    >
      <p>{say("foot.where")}</p>
    </Page>
  );
}

export function MissingScreen() {
  const onBack = (): void => {
    back();
  };
  if (lacking.value.length === 0) return <NothingMissing onBack={onBack} />;
  return (
    <Page
      title={say("missing.title")}
      onBack={onBack}
      action={
        <MainAction
          onPress={() => {
            go("take-in");
          }}
        >
          {say("missing.take_in")}
        </MainAction>
      }
    >
      <Sentences />
      <p>{say("missing.why")}</p>
      <p>{say("missing.new_log")}</p>
      <p>{say("missing.what_now")}</p>
      <OtherAction
        onPress={() => {
          goOnWithout();
          replace();
        }}
      >
        {say("missing.go_on")}
      </OtherAction>
    </Page>
  );
}

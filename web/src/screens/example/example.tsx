// The invented example shop: a way in from the empty first screen, a bar that never lets anybody forget
// it, and a way out that removes it.
import { useState } from "preact/hooks";
import { OtherAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { leaveExample } from "../../store/log/example";
import { isExample } from "../../store/phone/which";
import { say } from "../../words/say";
import { back } from "../route";

export function ExampleLink() {
  return isExample ? null : <PlaceLink to="?example#/">{say("example.look")}</PlaceLink>;
}

export function ExampleBar() {
  const [leaving, setLeaving] = useState(false);
  if (!isExample) return null;
  return (
    <aside class="example-bar" aria-label={say("example.bar")}>
      <span>{say("example.bar")}</span>
      <button
        type="button"
        disabled={leaving}
        onClick={() => {
          setLeaving(true);
          void leaveExample();
        }}
      >
        {say("example.leave")}
      </button>
    </aside>
  );
}

/** In place of everything that takes entries out of the phone or in. */
export function NotInExample() {
  return (
    <Page
      title={say("example.closed")}
      onBack={() => {
        back();
      }}
    >
      <p>{say("example.closed_text")}</p>
      <OtherAction
        onPress={() => {
          void leaveExample();
        }}
      >
        {say("example.leave")}
      </OtherAction>
    </Page>
  );
}

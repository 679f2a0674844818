// A blurred line or one off the scale: the cures in the order of their work, and dilution one to one.
import { MainAction, OtherAction, PlaceLink, SideAction } from "../../../elements/buttons";
import { Page } from "../../../elements/page";
import { assessBody, type Walk } from "../../../store/underway/walk";
import { cureSentence } from "../../../words/codes";
import { say } from "../../../words/say";
import { useResult } from "../../core";
import { address, go } from "../../route";
import { readingPlace } from "../place";
import type { CheckProps } from "../steps";

/** The diluted sample is read anew; what was read before stays at hand. */
export function Dilute({ machine, walk, change }: Pick<CheckProps, "machine" | "walk" | "change">) {
  const dilute = (): void => {
    change({
      diluted: "1",
      undiluted: walk.reading,
      reading: "",
      line: "",
      again: [],
      againText: "",
    });
    go("machines", machine.machine, readingPlace());
  };
  return <OtherAction onPress={dilute}>{say("reading.dilute")}</OtherAction>;
}

/** Back to what was read before. */
export function undiluted(walk: Walk): Partial<Walk> {
  return { diluted: "", undiluted: "", reading: walk.undiluted, again: [], againText: "" };
}

export function NotDiluted({ walk, change }: Pick<CheckProps, "walk" | "change">) {
  const undo = (): void => {
    change(undiluted(walk));
  };
  return <SideAction onPress={undo}>{say("reading.not_diluted")}</SideAction>;
}

export function BlurredScreen(props: CheckProps) {
  const { machine, walk, next, step, onBack } = props;
  const typed = machine.body.machine;
  const result = useResult("assess_sump", assessBody(typed, walk, { dip: false, reading: true }));
  return (
    <Page
      title={say("blurred.title")}
      place={typed.name}
      step={step}
      onBack={onBack}
      action={<MainAction onPress={next}>{say("blurred.go_on")}</MainAction>}
    >
      <p>{say("blurred.lead")}</p>
      <ol class="do-steps">
        {(result?.strength?.cures ?? []).map((cure) => (
          <li key={cure}>{cureSentence(cure)}</li>
        ))}
      </ol>
      {walk.diluted === "" ? <Dilute {...props} /> : null}
      <PlaceLink to={address("machines", machine.machine, "second", "change")}>
        {say("second.ask")}
      </PlaceLink>
    </Page>
  );
}

// A reading without a dip: where it stands, and no recipe, because nobody knows how much room there is.
import { PlaceLink } from "../../../elements/buttons";
import { assessBody, readingBody } from "../../../store/underway/walk";
import { say } from "../../../words/say";
import { useAnswer } from "../../core";
import { address } from "../../route";
import { CheckFrame } from "../checkframe";
import { SaveAction } from "../notsaved";
import { Doubted, Down, openDoubt, Refused, Waiting } from "../recipe/recipe";
import { useSavingOf } from "../save";
import { StateView } from "./stateview";
import type { AssessSumpResult } from "../../../core/messages";
import type { CheckProps } from "../steps";

function Ready({ props, assessment }: { props: CheckProps; assessment: AssessSumpResult }) {
  const { machine, walk } = props;
  const typed = machine.body.machine;
  const answered = { body: readingBody(typed, walk), shown: { assessment } };
  const { saving, press } = useSavingOf(machine, walk, answered);
  const action = <SaveAction saving={saving} onPress={press} />;
  return (
    <CheckFrame props={props} title={say("state_only.title")} action={action}>
      <StateView assessment={assessment} machine={typed} />
      <PlaceLink to={address("machines", machine.machine, "dip")}>
        {say("state_only.dip")}
      </PlaceLink>
    </CheckFrame>
  );
}

export function StateScreen(props: CheckProps) {
  const { machine, walk } = props;
  const body = assessBody(machine.body.machine, walk, { dip: false, reading: true });
  const answer = useAnswer("assess_sump", body);
  if (answer === null || answer.kind === "dropped") return <Waiting props={props} />;
  if (answer.kind === "down") return <Down props={props} />;
  if (answer.kind === "error") return <Refused props={props} error={answer.error} />;
  const byLog = props.since.found?.doubts ?? [];
  const doubt = openDoubt({ doubts: [...(answer.result.doubts ?? []), ...byLog] }, walk.kept);
  return doubt === null ? (
    <Ready props={props} assessment={answer.result} />
  ) : (
    <Doubted props={props} doubt={doubt} />
  );
}

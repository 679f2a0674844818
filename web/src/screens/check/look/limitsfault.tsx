// Limits of the shop that contradict each other, as another phone or an older build could write them.
import type { DeskError } from "../../../core/messages";
import { PlaceLink } from "../../../elements/buttons";
import { Fault } from "../../../elements/fault";
import { errorSentence } from "../../../words/errors";
import { say } from "../../../words/say";
import { address } from "../../route";

export function isOfLimits(error: DeskError): boolean {
  return error.path.startsWith("body.limits");
}

export function LimitsFault({ error }: { readonly error: DeskError }) {
  return (
    <>
      <Fault>
        {say("look.limits_wrong")} {errorSentence(error, say("field.limit"))}
      </Fault>
      <PlaceLink to={address("limits")}>{say("look.limits")}</PlaceLink>
    </>
  );
}

import { PlaceLink } from "../../elements/buttons";
import { StateShape } from "../../elements/statemark";
import { say } from "../../words/say";
import { address } from "../route";

/** One tap from wherever something can go wrong. */
export function MishapLink({
  machine,
  sign = false,
}: {
  readonly machine: string;
  readonly sign?: boolean;
}) {
  return (
    <PlaceLink to={address("machines", machine, "wrong")}>
      {sign ? <StateShape state="stop" size={22} /> : null}
      {say("mishap.title")}
    </PlaceLink>
  );
}

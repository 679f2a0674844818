import { PlaceLink } from "../../elements/buttons";
import { say } from "../../words/say";
import { address } from "../route";

/** One tap from wherever something can go wrong. */
export function MishapLink({ machine }: { readonly machine: string }) {
  return <PlaceLink to={address("machines", machine, "wrong")}>{say("mishap.title")}</PlaceLink>;
}

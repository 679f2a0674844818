// From a Why? to the card that shows it; Back leads to the question, where what was typed still stands.
import { say } from "../../words/say";
import { address } from "../route";
import type { Card } from "./cards";

export function cardLink(card: Card): { readonly to: string; readonly word: string } {
  return { to: address("learn", card), word: say("learn.more") };
}

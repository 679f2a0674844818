// Whose keys digits are typed with: the page's own, which fit a glove, or the phone's keyboard, for those
// who have made theirs fit their hands.
import { chosenOf, writeSetting } from "../../store/phone/settings";

export const KEYS = ["own", "phone"] as const;
export type Keys = (typeof KEYS)[number];

const SETTING = "keys";

export const chosenKeys = (): Keys => chosenOf(SETTING, KEYS);

/** Returns false when the choice could not be kept. */
export const keepKeys = (keys: Keys): boolean => writeSetting(SETTING, keys);

/** What a field asks of the phone: no keyboard where the page brings its own keys. */
export const inputModeOf = (): "decimal" | "none" =>
  chosenKeys() === "phone" ? "decimal" : "none";

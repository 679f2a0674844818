// Codes of pycore as sentences. A code that this build does not know is shown as it came: a caution
// must never vanish because its wording is missing.
import { isKey, say, type Blanks, type Key } from "./say";

export type State = "weak" | "in_range" | "strong" | "none" | "poured" | "stop";

const STATE_KEYS: Readonly<Record<State, Key>> = {
  weak: "state.weak",
  in_range: "state.in_range",
  strong: "state.strong",
  none: "state.none",
  poured: "state.poured",
  stop: "state.stop",
};

export function stateWord(state: State): string {
  return say(STATE_KEYS[state]);
}

function coded(prefix: string, code: string, blanks: Blanks = {}): string {
  const key = `${prefix}.${code}`;
  return isKey(key) ? say(key, blanks) : code.replaceAll("_", " ");
}

export const cautionSentence = (code: string): string => coded("caution", code);
/** On a page with room for all of it: some are shorter beside the keys. */
export function cautionInFull(code: string): string {
  const key = `caution_full.${code}`;
  return isKey(key) ? say(key) : cautionSentence(code);
}
export const chanceSentence = (code: string, band: Blanks): string => coded("chance", code, band);
/** What was taken for granted; the drift is a number that the sentence needs. */
export function assumedSentence(code: string, blanks: Blanks): string {
  const key = `assumed.${code}`;
  return isKey(key) ? say(key, blanks) : code.replaceAll("_", " ");
}

export const wayTitle = (code: string): string => coded("way", code);
export const wayReason = (code: string): string => coded("way", `${code}.why`);
export const cureSentence = (code: string): string => coded("cure", code);
export const secondSentence = (code: string): string => coded("second", code);
export const methodWord = (code: string): string => coded("method", code);
export const showsWord = (code: string): string => coded("shows", code);
export const compensationWord = (code: string): string => coded("compensation", code);
export const waterWord = (code: string): string => coded("water_kind", code);
export const levelChangeWord = (code: string): string => coded("level_change", code);
export const metalWord = (code: string): string => coded("metal", code);
export const noteSentence = (code: string): string => coded("note", code);
export const touchedWord = (code: string): string => coded("touched", code);
export const lineWord = (code: string): string => coded("line", code);
export const shareSentence = (code: string): string => coded("share", code);
export const fluidTypeWord = (code: string): string => coded("fluid_type", code);
export const knownByWord = (code: string): string => coded("known_by", code);
/** How a machine stands, as somebody set it, and why. */
export const shiftStateWord = (code: string): string => coded("shift_state", code);
export const toldKindWord = (code: string): string => coded("told_kind", code);
export const toldWhatWord = (code: string): string => coded("told_what", code);
/** Why a step of the balance does not count, and what speaks for a clean-out. */
export const cleanOutReason = (code: string): string => coded("trend.reason", code);
export const lookWord = (code: string): string => coded("look_seen", code);
/** What was advised, and what somebody did about it. */
export const lookAdvice = (code: string): string => coded("look.decision", code);
export const lookDone = (code: string): string => coded("look.did", code);
export const stopReasonWord = (code: string): string => coded("stop_reason", code);
export const kindWord = (code: string): string => coded("kind", code);
export const measuredByWord = (code: string): string => coded("measured_by", code);
export const factorKnownByWord = (code: string): string => coded("factor_by", code);
export const dippedEndWord = (code: string): string => coded("dipped_end", code);
export const readAsWord = (code: string): string => coded("read_as", code);
export const dipFromWord = (code: string): string => coded("dip_from", code);
export const levelTrueWord = (code: string): string => coded("level_true", code);
export const vesselWord = (code: string): string => coded("vessel", code);
export const thingByWord = (code: string): string => coded("thing_by", code);

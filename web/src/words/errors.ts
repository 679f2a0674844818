// An error of pycore as a sentence: which field, what is allowed, what was got.
import type { DeskError, Doubt } from "../core/messages";
import { fieldFromPath } from "./fields";
import { withUnit, write, writeDecimal, writeTyped } from "./numbers";
import { say, startLarge, type Blanks, type Key } from "./say";
import { writeAgo } from "./times";

type Limit = DeskError["limit"];

/** Limits are settings of the contract: they are written with as many decimals as they have. */
function bound(value: number | undefined, limit: Limit): string {
  return value === undefined ? "" : withUnit(writeDecimal(value, 0, 3), limit.unit ?? "1");
}

function rangeKey(limit: Limit): Key {
  const low = limit.minimum !== undefined ? "from" : limit.above !== undefined ? "above" : "none";
  const high = limit.maximum !== undefined ? "to" : limit.below !== undefined ? "below" : "none";
  const keys: Readonly<Record<string, Key>> = {
    "from to": "error.range.from_to",
    "from below": "error.range.from_below",
    "above to": "error.range.above_to",
    "above below": "error.range.above_below",
    "from none": "error.range.from",
    "above none": "error.range.above",
    "none to": "error.range.to",
    "none below": "error.range.below",
  };
  return keys[`${low} ${high}`] ?? "error.range.none";
}

function rangeSentence(error: DeskError, blanks: Blanks): string {
  const { limit } = error;
  return say(rangeKey(limit), {
    ...blanks,
    low: bound(limit.minimum ?? limit.above, limit),
    high: bound(limit.maximum ?? limit.below, limit),
  });
}

const PLAIN: Readonly<Partial<Record<DeskError["code"], Key>>> = {
  empty: "error.empty",
  missing: "error.empty",
  not_a_number: "error.not_a_number",
  not_finite: "error.not_a_number",
  not_whole: "error.not_whole",
  two_separators: "error.two_separators",
  thousands: "error.thousands",
  missing_unit: "error.missing_unit",
  ambiguous_unit: "error.ambiguous_unit",
  unknown_unit: "error.unknown_unit",
  wrong_dimension: "error.wrong_dimension",
  too_long: "error.too_long",
  too_few: "error.too_few",
  too_many: "error.too_many",
  not_allowed: "error.not_allowed",
  not_a_code: "error.not_a_code",
  code_mismatch: "error.code_mismatch",
  not_rising: "error.not_rising",
  mark_above_bucket: "error.mark_above_bucket",
  no_factor: "error.no_factor",
  neat_oil: "error.neat_oil",
  off_scale: "error.off_scale",
  not_a_date: "error.not_a_date",
  not_for_kind: "error.not_for_kind",
  obstacle_too_large: "error.obstacle_too_large",
  pours_contradict: "error.pours_contradict",
};

/** Numbers that could be meant are written as this language writes them; other answers as they are. */
function allowed({ code, limit }: DeskError): string {
  const list = limit.allowed ?? [];
  if (code !== "thousands") return list.join(", ");
  const [low, high] = list.map((text) => writeTyped({ text, unit: limit.unit ?? "1" }));
  return say("error.either", { low: low ?? "", high: high ?? "" });
}

function got(error: DeskError): string {
  const value = error.got;
  if (typeof value === "number") return writeDecimal(value, 0, 6);
  return typeof value === "string" ? value.trim() : "";
}

/** Names the limits where pycore gives them; otherwise says only that the order is wrong. */
function orderSentence(error: DeskError, blanks: Blanks): string {
  if (rangeKey(error.limit) !== "error.range.none") return rangeSentence(error, blanks);
  if (error.path === "body.poured_at") return say("recheck.clock_back");
  return say("error.order", blanks);
}

/** How far two sides stand apart, and how far they may. */
function apart({ got: value, limit }: DeskError): Blanks {
  const unit = limit.unit ?? "1";
  const difference = typeof value === "number" ? withUnit(writeDecimal(value, 0, 3), unit) : "";
  return { difference, most: bound(limit.maximum, limit) };
}

const UNITS_REFUSED: readonly DeskError["code"][] = [
  "missing_unit",
  "unknown_unit",
  "wrong_dimension",
];

/** A factor, a pH or a count: "1" is its unit in the contract and no word for people. */
function isBare({ code, limit }: DeskError): boolean {
  const list = limit.allowed ?? [];
  return UNITS_REFUSED.includes(code) && list.length === 1 && list[0] === "1";
}

function mainSentence(error: DeskError, blanks: Blanks): string {
  if (isBare(error)) return say("error.no_unit", blanks);
  if (error.code === "out_of_range") return rangeSentence(error, blanks);
  if (error.code === "order") return orderSentence(error, blanks);
  // What was worked out from two dips was typed by nobody: it is told in the sentence alone.
  if (error.code === "screen_blocked") return say("error.screen_blocked", apart(error));
  if (error.code === "too_uncertain") {
    return say("error.too_uncertain", { ...blanks, ...apart(error) });
  }
  const key = PLAIN[error.code];
  return key === undefined ? say("error.other", { ...blanks, code: error.code }) : say(key, blanks);
}

const WORKED_OUT: readonly DeskError["code"][] = [
  "screen_blocked",
  "obstacle_too_large",
  "too_uncertain",
];

/** `name` is used where the asked field stands alone and its path says less than the page knows. */
export function errorSentence(error: DeskError, name?: string): string {
  // A mark that was refused for the litres below it: those were worked out, not typed.
  const isVolume = /sump\.(full|rim)_depth$/.test(error.path) && error.limit.unit === "L";
  const asked = name ?? fieldFromPath(error.path).name;
  const field = isVolume ? say("field.full_volume") : asked;
  const blanks = {
    field,
    Field: startLarge(field),
    got: got(error),
    example: writeDecimal(5.2, 1, 1),
    allowed: allowed(error),
    most: bound(error.limit.most, {}),
    least: bound(error.limit.least, {}),
  };
  const main = mainSentence(error, blanks);
  const isWorkedOut = isVolume || WORKED_OUT.includes(error.code);
  return blanks.got === "" || isWorkedOut || main.includes(blanks.got)
    ? main
    : `${main} ${say("error.got", blanks)}`;
}

/** The question for something possible but unusual. */
export function doubtSentence(doubt: Doubt, name?: string): string {
  const field = name ?? fieldFromPath(doubt.path).name;
  const { got, last, last_at: at, slip } = doubt;
  // Part of a rule has six decimals, so that a sixty-fourth fits; no stick is that fine.
  const partOfRule = got.unit === "mm" ? 0 : 2;
  const fine = got.fraction === undefined ? got.decimals : partOfRule;
  const near = (value: number): string => withUnit(writeDecimal(value, fine, fine), got.unit);
  // A usual range is a setting of the contract; other bounds are as fine as the number they are about.
  const end = (value: number): string =>
    doubt.code === "unusual" ? bound(value, { unit: got.unit }) : near(value);
  const isOne = doubt.code === "unusual" && doubt.usual_low === doubt.usual_high;
  const main = say(isOne ? "doubt.unusual_one" : `doubt.${doubt.code}`, {
    Field: startLarge(field),
    field,
    got: write(got),
    last: last === undefined ? "" : write(last),
    ago: at === undefined ? "" : writeAgo(at, new Date()),
    low: end(doubt.usual_low),
    high: end(doubt.usual_high),
  });
  return slip === undefined ? main : `${main} ${say("doubt.slip", { slip: write(slip) })}`;
}

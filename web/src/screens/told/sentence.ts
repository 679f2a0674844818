// What was told, in one sentence for a list and as facts for its own page.
import type { BucketRow, CleanOutContent, Typed } from "../../core/messages";
import type { ToldEntry } from "../../store/log/entry";
import {
  lookWord,
  shiftStateWord,
  stopReasonWord,
  toldKindWord,
  toldWhatWord,
} from "../../words/codes";
import { writeTyped } from "../../words/numbers";
import { say, sayCount, startLarge } from "../../words/say";
import { writeMoment } from "../../words/times";
import { isRunIn } from "../check/pour/steps";
import type { Fact } from "../setup/facts";

/** Through a hose or a mixing unit nothing is counted in buckets. */
function runInText({ each, strength }: BucketRow): string {
  const amount = each === undefined ? "" : writeTyped(each);
  if (strength === undefined) return say("told.run_in_water", { amount });
  return say("told.run_in", { amount, strength: writeTyped(strength) });
}

/** Without a strength only water is known for what it is. */
const isTold = ({ kind, strength }: BucketRow): boolean =>
  kind === "water" || strength !== undefined;

function bucketsText(row: BucketRow): string {
  const about = row.about === true ? say("told.about") : "";
  if (isRunIn(row) && row.count === 1 && row.concentrate === undefined && isTold(row))
    return runInText(row);
  if (row.kind === "water") return sayCount("told.buckets_water", row.count);
  if (row.water !== undefined && row.concentrate !== undefined)
    return sayCount("told.buckets_marks", row.count, {
      water: writeTyped(row.water),
      concentrate: writeTyped(row.concentrate),
    });
  if (row.kind === "own_fluid" && row.concentrate !== undefined && row.each !== undefined)
    return sayCount("told.buckets_own", row.count, {
      fluid: writeTyped(row.each),
      concentrate: writeTyped(row.concentrate),
    });
  const neat = row.concentrate ?? row.each;
  if (row.kind === "concentrate" && neat !== undefined)
    return sayCount("told.buckets_concentrate", row.count, { concentrate: writeTyped(neat) });
  if (row.strength !== undefined)
    return sayCount("told.buckets_mix", row.count, { about, strength: writeTyped(row.strength) });
  return sayCount("told.buckets_unknown", row.count);
}

export function rowsText(rows: readonly BucketRow[]): string {
  return rows.map(bucketsText).join("; ");
}

function pourText(entry: Extract<ToldEntry, { kind: "pour" }>): string {
  const { pours, finished } = entry.body;
  if (pours.length === 0) return say("told.given_up");
  return finished ? rowsText(pours) : say("told.unfinished", { buckets: rowsText(pours) });
}

function stateText({ body }: Extract<ToldEntry, { kind: "machine_state" }>): string {
  const state = startLarge(shiftStateWord(body.state));
  if (body.reason === undefined) return state;
  return say("told.state_why", { state, why: stopReasonWord(body.reason) });
}

function checkText({ body }: Extract<ToldEntry, { kind: "recheck" }>): string {
  const { dip, reading } = body;
  const parts = [
    ...(dip === undefined ? [] : [say("told.dip", { dip: writeTyped(dip.depth) })]),
    ...(reading === undefined ? [] : [say("told.reading", { reading: writeTyped(reading.shows) })]),
    ...(body.look ?? []).map(lookWord),
  ];
  return parts.length === 0 ? toldKindWord("recheck") : parts.join("; ");
}

function cleanOutText({ finished, charge, steps }: CleanOutContent): string {
  const last = steps?.at(-1);
  if (finished && charge !== undefined && charge.length > 0)
    return say("told.cleaned_with", { buckets: rowsText(charge) });
  if (finished || last === undefined) return say(finished ? "told.cleaned" : "told.cleaning");
  const state = say(`clean.tick_${last.state}`);
  if (charge === undefined || charge.length === 0) return say("told.cleaning_at", { state });
  return say("told.cleaning_with", { state, buckets: rowsText(charge) });
}

type CareKey = "told.check_every" | "told.clean_out_every" | "told.most_lost";

function careText(key: CareKey, { text }: Typed): string {
  return text.trim() === "" ? say(`${key}_published`) : say(key, { n: text.trim() });
}

function shopText({ body }: Extract<ToldEntry, { kind: "shop_set" }>): string {
  const who = body.who_to_ask;
  const parts = [
    ...(who === undefined ? [] : [who === "" ? say("told.nobody") : say("mishap.who", { who })]),
    ...(body.look_limits === undefined ? [] : [say("limits.title")]),
    ...(body.check_every_d === undefined ? [] : [careText("told.check_every", body.check_every_d)]),
    ...(body.clean_out_every_d === undefined
      ? []
      : [careText("told.clean_out_every", body.clean_out_every_d)]),
    ...(body.most_lost_pct_d === undefined
      ? []
      : [careText("told.most_lost", body.most_lost_pct_d)]),
  ];
  return parts.join("; ");
}

function plainText(entry: ToldEntry): string {
  switch (entry.kind) {
    case "pour":
      return pourText(entry);
    case "recheck":
      return checkText(entry);
    case "clean_out":
      return cleanOutText(entry.body);
    case "additive":
      return entry.body.amount === undefined
        ? entry.body.name
        : `${entry.body.name}: ${writeTyped(entry.body.amount)}`;
    case "unknown_addition":
      return say("told.unknown", { what: toldWhatWord(entry.body.what ?? "unknown") });
    case "machine_state":
      return stateText(entry);
    case "shop_set":
      return shopText(entry);
    case "note":
      return entry.body.text;
    case "calibration":
      return entry.body.zero === undefined
        ? toldKindWord("calibration")
        : say("told.zero", { zero: writeTyped(entry.body.zero) });
  }
}

/** The line in the log. */
export function toldText(entry: ToldEntry): string {
  return plainText(entry);
}

/** What was written down beside the charge, and when each step was done. */
function cleanOutFacts(body: Extract<ToldEntry, { kind: "clean_out" }>["body"]): readonly Fact[] {
  const {
    cleaner,
    waste,
    waste_note: note,
    rinse,
    left,
    left_strength: strength,
    lot,
    steps,
  } = body;
  const amounts = [
    [say("amend.waste"), waste],
    [say("amend.rinse"), rinse],
    [say("amend.left"), left],
    [say("amend.left_strength"), strength],
  ] as const;
  return [
    ...(steps ?? []).map(({ state, at }): Fact => [say(`clean.tick_${state}`), writeMoment(at)]),
    ...(cleaner === undefined ? [] : [[say("amend.cleaner"), cleaner] as const]),
    ...amounts.flatMap(([word, typed]): readonly Fact[] =>
      typed === undefined ? [] : [[word, writeTyped(typed)]],
    ),
    ...(note === undefined ? [] : [[say("amend.waste_note"), note] as const]),
    ...(lot === undefined ? [] : [[say("amend.lot"), lot] as const]),
  ];
}

function remarksOf(entry: ToldEntry): string {
  return "remarks" in entry.body ? (entry.body.remarks ?? "") : "";
}

/** Everything that was told, for the entry's own page. */
export function toldFacts(entry: ToldEntry): readonly Fact[] {
  const remarks = remarksOf(entry);
  const { body } = entry;
  const charge = "charge" in body ? (body.charge ?? []) : [];
  return [
    [toldKindWord(entry.kind), plainText(entry)],
    ...(charge.length === 0 ? [] : [[say("told.charge"), rowsText(charge)] as const]),
    ...(entry.kind === "clean_out" ? cleanOutFacts(entry.body) : []),
    ...("agreed_with" in body ? [[say("told.agreed"), body.agreed_with] as const] : []),
    ...("until" in body ? [[say("tag.until"), writeMoment(body.until)] as const] : []),
    ...(entry.by === undefined ? [] : [[say("told.by"), entry.by] as const]),
    ...(remarks === "" ? [] : [[say("told.remarks"), remarks] as const]),
  ];
}

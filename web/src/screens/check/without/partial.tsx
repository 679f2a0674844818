// A check with the dip or the reading left open: what was typed, its line in the log, and its page.
import {
  isHolding,
  isWhole,
  isLookOnly,
  type CheckEntry,
  type HoldEntry,
  type LookEntry,
  type ReadingEntry,
} from "../../../store/log/entry";
import { write, writeTyped } from "../../../words/numbers";
import { say, sayCount } from "../../../words/say";
import { dipFacts, writeDip } from "../dip/level";
import type { PlanCheckBody } from "../../../core/messages";
import type { Fact } from "../../setup/facts";
import { Rows } from "../look/advice";
import { HoldingView } from "./holdingview";
import { readingFacts } from "../reading/readingfacts";
import { StateView } from "./stateview";

export type PartialEntry = HoldEntry | ReadingEntry | LookEntry;

const seenWords = ({ look = [] }: LookEntry): string =>
  look.map((code) => say(`look_seen.${code}`)).join(", ");

/** Whether the newest thing known of a machine is a top-up that still waits for its reading. */
export function isReadingOpen(check: CheckEntry | undefined): boolean {
  return check !== undefined && isHolding(check);
}

/** What held only for one check; the ordinary one has none of it. */
export function onceInputs(
  body: Pick<PlanCheckBody, "fill_to_depth" | "concentrate_at_hand">,
): readonly Fact[] {
  const { fill_to_depth: fill, concentrate_at_hand: stock } = body;
  return [
    ...(fill === undefined ? [] : [[say("answers.fill"), writeTyped(fill)] as const]),
    ...(stock === undefined ? [] : [[say("answers.stock"), writeTyped(stock)] as const]),
  ];
}

export function partialInputs(entry: PartialEntry): readonly Fact[] {
  if (isLookOnly(entry)) return [[say("compact.look"), seenWords(entry)]];
  if (isHolding(entry)) {
    const { dip, usual, machine } = entry.body;
    return [
      ...dipFacts(machine, dip),
      [say("answers.reading"), say("partial.open")],
      ...(usual === undefined ? [] : [[say("hold.usual"), writeTyped(usual)] as const]),
      ...onceInputs(entry.body),
    ];
  }
  const { reading, second } = entry.body;
  return [[say("answers.dip"), say("partial.open")], ...readingFacts(reading, second)];
}

export function partialSummary(entry: PartialEntry): string {
  if (isLookOnly(entry)) return say("look.saved", { seen: seenWords(entry) });
  if (isHolding(entry)) {
    const { buckets } = entry.shown.holding.totals;
    const blanks = { dip: writeDip(entry.body.dip) };
    return buckets === 0
      ? say("log.holding_nothing", blanks)
      : sayCount("log.holding", buckets, blanks);
  }
  const strength = entry.shown.assessment.strength?.shown.strength;
  const reading = writeTyped(entry.body.reading.shows);
  return strength === undefined
    ? say("log.reading_only", { reading })
    : say("log.strength_only", { reading, now: write(strength) });
}

export function PartialView({ entry }: { readonly entry: PartialEntry }) {
  if (isLookOnly(entry)) return <Rows rows={entry.shown.look?.rows ?? []} />;
  return isHolding(entry) ? (
    <HoldingView result={entry.shown} body={entry.body} />
  ) : (
    <StateView assessment={entry.shown.assessment} machine={entry.body.machine} />
  );
}

/** What comes next after such a check was saved; null for an ordinary one. */
export function partialNext(entry: CheckEntry): string | null {
  if (isHolding(entry)) return say("partial.read_soon");
  if (isLookOnly(entry)) return say("look.lead.do_not_feed");
  return isWhole(entry) ? null : say("partial.dip_soon");
}

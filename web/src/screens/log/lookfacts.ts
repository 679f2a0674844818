// What was seen, smelled and measured beside a check, as rows of name and value.
import { isLookOnly, type CheckEntry } from "../../store/log/entry";
import { lookAdvice, lookDone, lookWord } from "../../words/codes";
import { writeTyped } from "../../words/numbers";
import { say } from "../../words/say";
import type { Fact } from "../setup/facts";

/** What was advised and done; nothing where there was nothing to advise. */
function adviceFacts({ shown }: CheckEntry): readonly Fact[] {
  // From another app's file it may be anything.
  const { look } = shown as {
    readonly look?: Partial<Record<"decision" | "chosen" | "rows", unknown>>;
  };
  const { decision, chosen, rows } = look ?? {};
  const isGone =
    Array.isArray(rows) &&
    rows.some((row: { code?: unknown } | null) => row?.code === "smell_gone");
  const gone: readonly Fact[] = isGone ? [[say("look.done"), say("look.smell_gone")]] : [];
  if (typeof decision !== "string" || typeof chosen !== "string" || decision === "go_on")
    return gone;
  return [
    ...gone,
    [say("look.advised"), lookAdvice(decision)],
    [say("look.done"), lookDone(chosen)],
  ];
}

export function lookFacts(entry: CheckEntry): readonly Fact[] {
  const { look, ph, nitrite, dip_slide: slide, temperature, first_fill_ph: first } = entry;
  const measured = [
    ["look.ph", ph],
    ["look.nitrite", nitrite],
    ["look.germs", slide?.germs],
    ["look.warmth", temperature],
    ["look.first_ph_label", first],
  ] as const;
  const seen = look === undefined || isLookOnly(entry) ? "" : look.map(lookWord).join(", ");
  return [
    ...(seen === "" ? [] : [[say("compact.look"), seen] as const]),
    ...measured.flatMap(([label, typed]) =>
      typed === undefined ? [] : [[say(label), writeTyped(typed)] as const],
    ),
    ...adviceFacts(entry),
  ];
}

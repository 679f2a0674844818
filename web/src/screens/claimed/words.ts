// A line of a place that several claim, in words: enough to know it again.
import type { Fork } from "../../store/log/forks";
import { isOfDeed, type AnyEntry } from "../../store/log/entry";
import { forks } from "../../store/log/journal";
import type { Line } from "../../store/log/lines";
import { machineById } from "../../store/log/machines";
import { toldKindWord } from "../../words/codes";
import { say } from "../../words/say";
import { writeMoment } from "../../words/times";
import { deedWord, entryText } from "../correct/facts";

function kindWord(entry: AnyEntry): string {
  if (isOfDeed(entry)) return deedWord(entry);
  if (entry.kind === "machine") return say("log.set_up");
  return entry.kind === "check" ? say("entry.check") : toldKindWord(entry.kind);
}

function aboutText({ amendment, decision }: Line): string {
  if (amendment !== null) return say(`claimed.${amendment.kind}`, { reason: amendment.reason });
  if (decision !== null) return say("claimed.decision", { reason: decision.reason });
  return say("claimed.unknown");
}

/** What an entry from elsewhere has shown may be anything. */
function wholeText(entry: AnyEntry): string {
  try {
    return say("amend.deed", { what: kindWord(entry), text: entryText(entry) });
  } catch {
    return kindWord(entry);
  }
}

interface LineWords {
  readonly text: string;
  /** Machine, time and name: where two phones are at odds, they tell whom to ask. */
  readonly parts: string;
}

export function lineWords(line: Line): LineWords {
  const { entry } = line;
  const name = machineById(line.machine)?.body.machine.name;
  const by = entry?.by;
  const parts = [
    ...(name === undefined ? [] : [name]),
    ...(line.wall === "" ? [] : [writeMoment(entry?.measured_at ?? line.wall)]),
    ...(by === undefined ? [] : [say("tell.by", { by })]),
  ].join(" · ");
  return {
    parts,
    text:
      entry === null
        ? aboutText(line)
        : wholeText({ ...entry, place: 0, strand: line.log, earlier: [] }),
  };
}

/** The same in one text. */
export function lineText(line: Line): string {
  const { text, parts } = lineWords(line);
  return parts === "" ? text : `${text} · ${parts}`;
}

/** Those about which nobody has decided, or people have decided differently. */
export function openForks(): readonly Fork[] {
  return forks.value.filter(({ chosen }) => chosen === null);
}

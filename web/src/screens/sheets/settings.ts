// What this phone remembers for printing: the paper, how long its check line came out, and each
// machine's bucket. Texts as they were typed; pycore reads them at every print.
import { signal, type Signal } from "@preact/signals";
import type { DrawSheetBody, Typed, Unit } from "../../core/messages";
import {
  dropDraft,
  followDrafts,
  readDraft,
  readText,
  writeDraft,
  writeText,
} from "../../store/underway/drafts";
import { DECIMAL_SIGN } from "../../words/numbers";
import { LOCALE, sentencesBelow } from "../../words/say";

export type PaperName = DrawSheetBody["paper"];
export const PAPERS: readonly PaperName[] = ["A4", "Letter"];

/** Territories that print on Letter: Unicode CLDR, supplemental data, paperSize; from memory. */
const LETTER = "BZ CA CL CO CR GT MX NI PA PH PR SV US VE".split(" ");

export function isPaper(value: unknown): value is PaperName {
  return value === "A4" || value === "Letter";
}

function usualPaper(): PaperName {
  const region = new Intl.Locale(LOCALE).region;
  return region !== undefined && LETTER.includes(region) ? "Letter" : "A4";
}

function readPaper(): PaperName {
  const kept = readText("print.paper");
  return isPaper(kept) ? kept : usualPaper();
}

export const paper = signal<PaperName>(readPaper());

export function choosePaper(name: PaperName): void {
  paper.value = name;
  writeText("print.paper", name);
}

/** How long the 100 mm line came out, always of a print that was not corrected. */
export interface Line {
  readonly text: string;
  /** pycore's word: near enough to 100 mm, so nothing is corrected. */
  readonly passes: boolean;
}

export const LINE_UNIT: Unit = "mm";

function readLine(name: PaperName): Line | null {
  const value = readDraft(`print.line.${name}`) as Partial<Line> | null;
  const { text, passes } = value ?? {};
  return typeof text === "string" && typeof passes === "boolean" ? { text, passes } : null;
}

const lines: Readonly<Record<PaperName, Signal<Line | null>>> = {
  A4: signal(readLine("A4")),
  Letter: signal(readLine("Letter")),
};

/** Both were read before a start had looked for what a killed browser did not note. */
export function followPrinter(): void {
  followDrafts((name) => {
    if (name === "print.paper") paper.value = readPaper();
    const of = PAPERS.find((one) => name === `print.line.${one}`);
    if (of !== undefined) lines[of].value = readLine(of);
  });
}

export function lineOf(name: PaperName): Line | null {
  return lines[name].value;
}

export function keepLine(name: PaperName, line: Line | null): void {
  lines[name].value = line;
  if (line === null) dropDraft(`print.line.${name}`);
  else writeDraft(`print.line.${name}`, line);
}

/** What every sheet of this paper is asked with. */
export function paperPart(
  name: PaperName,
): Pick<DrawSheetBody, "paper" | "measured_100_mm" | "decimal_sign" | "words"> {
  const line = lineOf(name);
  const sign = DECIMAL_SIGN === "." || DECIMAL_SIGN === "," ? DECIMAL_SIGN : null;
  const measured: Typed | null =
    line === null || line.passes ? null : { text: line.text, unit: LINE_UNIT };
  return {
    paper: name,
    words: sentencesBelow("sheet."),
    ...(measured === null ? {} : { measured_100_mm: measured }),
    ...(sign === null ? {} : { decimal_sign: sign }),
  };
}

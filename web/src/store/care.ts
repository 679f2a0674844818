// How often the shop wants its machines checked and cleaned out, and what they lose at the most. Settings of
// this phone; the published intervals and common practice hold where it has none.
import type { LookBackBody, TrendBody } from "../core/messages";
import { readNote, writeNote } from "./notes";

export interface Care {
  /** Days as typed; empty: the published interval. */
  readonly check: string;
  readonly cleanOut: string;
  /** Per cent of the full sump in a day; empty: as common practice has it. */
  readonly mostLost: string;
}

const NONE: Care = { check: "", cleanOut: "", mostLost: "" };

export function shopCare(): Care {
  const kept = readNote("care") as Partial<Care> | null;
  return typeof kept?.check === "string" && typeof kept.cleanOut === "string"
    ? { check: kept.check, cleanOut: kept.cleanOut, mostLost: kept.mostLost ?? "" }
    : NONE;
}

export function keepCare(care: Care): boolean {
  return writeNote("care", care);
}

export function careFields({
  check,
  cleanOut,
}: Care): Pick<TrendBody, "check_every" | "clean_out_every"> {
  const typed = (text: string): { text: string; unit: "1" } => ({ text: text.trim(), unit: "1" });
  return {
    ...(check.trim() === "" ? {} : { check_every: typed(check) }),
    ...(cleanOut.trim() === "" ? {} : { clean_out_every: typed(cleanOut) }),
  };
}

/** What ordinary use takes in a day at the most, where the shop has its own word on it. */
export function mostLost(): Pick<LookBackBody, "most_lost"> {
  const text = shopCare().mostLost.trim();
  return text === "" ? {} : { most_lost: { text, unit: "%" } };
}

/** The shop's own interval from one clean-out to the next. */
export function cleanEvery(): Pick<LookBackBody, "clean_out_every"> {
  const { clean_out_every } = careFields(shopCare());
  return clean_out_every === undefined ? {} : { clean_out_every };
}

// How often the shop wants its machines checked and cleaned out. A setting of this phone; the published
// intervals hold where it has none.
import type { TrendBody } from "../core/messages";
import { readNote, writeNote } from "./notes";

export interface Care {
  /** Days as typed; empty: the published interval. */
  readonly check: string;
  readonly cleanOut: string;
}

const NONE: Care = { check: "", cleanOut: "" };

export function shopCare(): Care {
  const kept = readNote("care") as Partial<Care> | null;
  return typeof kept?.check === "string" && typeof kept.cleanOut === "string"
    ? { check: kept.check, cleanOut: kept.cleanOut }
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

import type { DrawSheetBody } from "../../core/messages";
import { say } from "../../words/say";

export type SheetKind = DrawSheetBody["kind"];
/** The sheets of a machine; a slip belongs to a check instead. */
export type MachineSheet = Exclude<SheetKind, "recipe_slip">;

export const MACHINE_SHEETS: readonly MachineSheet[] = [
  "dip_scale",
  "bucket_scale",
  "machine_card",
  "log_sheet",
];

export function isMachineSheet(kind: string | undefined): kind is MachineSheet {
  return MACHINE_SHEETS.some((known) => known === kind);
}

export function sheetName(kind: SheetKind): string {
  return say(`print.${kind}`);
}

// Since when this build is on this phone. A build carries no date: the same sources give the same bytes.
import { readSetting, writeSetting } from "./settings";

const SETTING = "build";

/** Notes the first start of this build; called once at each start. */
export function noteBuild(today: Date): void {
  if (readSetting(SETTING)?.startsWith(`${__BUILD_ID__} `) === true) return;
  writeSetting(SETTING, `${__BUILD_ID__} ${today.toISOString()}`);
}

/** The moment of that start; null where the browser keeps nothing. */
export function buildSince(): string | null {
  return readSetting(SETTING)?.split(" ")[1] ?? null;
}

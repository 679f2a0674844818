// Light, dark, or as the phone has it. The colours themselves stand in tokens.css.
import { readSetting, writeSetting } from "../store/phone/settings";

export const THEMES = ["phone", "light", "dark"] as const;
export type Theme = (typeof THEMES)[number];

const SETTING = "theme";

export function chosenTheme(): Theme {
  const kept = readSetting(SETTING);
  return THEMES.find((theme) => theme === kept) ?? "phone";
}

/** Puts the chosen theme on the page. */
export function showTheme(): void {
  const theme = chosenTheme();
  if (theme === "phone") delete document.documentElement.dataset["theme"];
  else document.documentElement.dataset["theme"] = theme;
}

/** Returns false when the choice could not be kept. */
export function keepTheme(theme: Theme): boolean {
  const isKept = writeSetting(SETTING, theme);
  showTheme();
  return isKept;
}

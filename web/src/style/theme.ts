// Light or dark, and the size of the text, or both as the phone has them. The colours themselves stand in
// tokens.css; everything that is read is in rem, so one number sizes all of it.
import { chosenOf, writeSetting } from "../store/phone/settings";

export const THEMES = ["phone", "light", "dark"] as const;
export type Theme = (typeof THEMES)[number];
export const SIZES = ["phone", "larger", "largest"] as const;
export type Size = (typeof SIZES)[number];

const THEME = "theme";
const SIZE = "size";

export const chosenTheme = (): Theme => chosenOf(THEME, THEMES);
export const chosenSize = (): Size => chosenOf(SIZE, SIZES);

/** Puts the chosen theme and size on the page. */
export function showTheme(): void {
  const { dataset } = document.documentElement;
  dataset[THEME] = chosenTheme();
  dataset[SIZE] = chosenSize();
}

/** Returns false when the choice could not be kept. */
export function keepTheme(theme: Theme): boolean {
  const isKept = writeSetting(THEME, theme);
  showTheme();
  return isKept;
}

/** Returns false when the choice could not be kept. */
export function keepSize(size: Size): boolean {
  const isKept = writeSetting(SIZE, size);
  showTheme();
  return isKept;
}

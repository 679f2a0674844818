// Which language the page speaks: the one that was chosen, else the first of the phone's list that is
// there, else English. Each language's sentences are a file of their own; only one of them is fetched.
import { readSetting, writeSetting } from "../store/phone/settings";
import german from "../../../shared/words/de.json?url";
import english from "../../../shared/words/en.json?url";
import type { Words } from "./say";

export const LANGUAGES = ["en", "de"] as const;
export type Language = (typeof LANGUAGES)[number];

interface Spoken {
  /** Where its sentences are. */
  readonly words: string;
  /** Where the phone names no country of this language. */
  readonly usualLocale: string;
}

const SPOKEN: Readonly<Record<Language, Spoken>> = {
  en: { words: english, usualLocale: "en-GB" },
  de: { words: german, usualLocale: "de-DE" },
};

const SETTING = "language";

function isLanguage(value: unknown): value is Language {
  return LANGUAGES.some((language) => language === value);
}

const baseOf = (tag: string): string => tag.split("-")[0]?.toLowerCase() ?? "";

export function chosenLanguage(): Language {
  const kept = readSetting(SETTING);
  if (isLanguage(kept)) return kept;
  return navigator.languages.map(baseOf).find(isLanguage) ?? "en";
}

/** Returns false when the choice could not be kept. */
export function keepLanguage(language: Language): boolean {
  return writeSetting(SETTING, language);
}

/**
 * The phone's own variety of the language, such as en-US or de-CH, which decides signs and dates.
 * Some engines report a tag that Intl refuses ("C"); a page must not die of that.
 */
export function localeOf(language: Language): string {
  const own = navigator.languages.find((tag) => baseOf(tag) === language);
  try {
    return new Intl.NumberFormat(own ?? SPOKEN[language].usualLocale).resolvedOptions().locale;
  } catch {
    return SPOKEN[language].usualLocale;
  }
}

export async function wordsOf(language: Language): Promise<Words> {
  const answer = await fetch(SPOKEN[language].words);
  if (!answer.ok) throw new Error(`sentences: ${answer.status}`);
  return (await answer.json()) as Words;
}

// Every sentence of the page comes from shared/words, so that a language can be added without
// touching a screen and no sentence is glued together from parts. English decides which sentences
// there are; a test holds the other files to it.
import type english from "../../../shared/words/en.json";
import { countIn } from "./decimal";

export type Words = typeof english;
type Sentence<K extends keyof Words> = Words[K] extends string ? K : never;
/** A sentence that stays the same for every number. */
export type Key = { [K in keyof Words]: Sentence<K> }[keyof Words];
/** A sentence with plural forms. */
export type CountKey = Exclude<keyof Words, Key>;
export type Blanks = Readonly<Record<string, string>>;

let words: Readonly<Record<string, string | Readonly<Record<string, string>>>> = {};
let plurals: Intl.PluralRules | undefined;

/** The locale of the page: its language as this phone's country writes it. Set before any screen. */
export let LOCALE = "en-GB";

/** Called once, before any screen runs: many keep sentences from the start. */
export function speak(locale: string, sentences: Words): void {
  LOCALE = locale;
  words = sentences;
  plurals = undefined;
}

/** A blank that nobody filled stays visible: a sentence with a silent hole could be misread. */
function fill(sentence: string, blanks: Blanks): string {
  return sentence.replace(/\{(\w+)\}/g, (hole, name: string) => blanks[name] ?? hole);
}

export function say(key: Key, blanks: Blanks = {}): string {
  return fill(words[key] as string, blanks);
}

/** The plural form is a whole sentence, chosen by the language's own rules. */
function formOf(key: CountKey, count: number): string {
  const forms = words[key] as Readonly<Record<string, string>>;
  plurals ??= new Intl.PluralRules(LOCALE);
  return forms[plurals.select(count)] ?? forms["other"] ?? "";
}

export function sayCount(key: CountKey, count: number, blanks: Blanks = {}): string {
  return fill(formOf(key, count), { n: countIn(LOCALE, count), ...blanks });
}

/** A piece of a sentence: words, or what was put into a blank. */
export interface Piece {
  readonly text: string;
  readonly isFilled: boolean;
}

type Fillings = Readonly<Record<string, string | readonly Piece[]>>;

/** The sentence in pieces, so that a page can set its numbers larger; a blank may be pieces itself. */
function piecesOf(sentence: string, fillings: Fillings): readonly Piece[] {
  return sentence.split(/(\{\w+\})/).flatMap((part): readonly Piece[] => {
    const filling = /^\{\w+\}$/.test(part) ? fillings[part.slice(1, -1)] : undefined;
    if (filling === undefined) return part === "" ? [] : [{ text: part, isFilled: false }];
    return typeof filling === "string" ? [{ text: filling, isFilled: true }] : filling;
  });
}

export function sayPieces(key: Key, fillings: Fillings): readonly Piece[] {
  return piecesOf(words[key] as string, fillings);
}

export function sayCountPieces(key: CountKey, count: number, fillings: Fillings): readonly Piece[] {
  return piecesOf(formOf(key, count), { n: countIn(LOCALE, count), ...fillings });
}

/** True where a word exists: codes come from pycore and a newer one may not be known here yet. */
export function isKey(key: string): key is Key {
  return typeof words[key] === "string";
}

/** The same for a sentence with plural forms. */
export function isCountKey(key: string): key is CountKey {
  return typeof words[key] === "object";
}

/** Every sentence below a prefix, by the rest of its key: what a sheet is printed with. */
export function sentencesBelow(prefix: string): Readonly<Record<string, string>> {
  const found = Object.entries(words).filter(([key]) => key.startsWith(prefix));
  return Object.fromEntries(
    found.flatMap(([key, text]) =>
      typeof text === "string" ? [[key.slice(prefix.length), text]] : [],
    ),
  );
}

/** Field names stand inside sentences as they are; at the start they need a capital. */
export function startLarge(text: string): string {
  return text.charAt(0).toLocaleUpperCase(LOCALE) + text.slice(1);
}

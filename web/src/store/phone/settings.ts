// What a person chose for the whole app: language, theme, size, keys, sounds. Apart from the notes of a shop, so that
// the example shares it and leaving the example does not take it away.

/** Neither shop's notes begin like this. */
const PREFIX = "pailwright-settings.";

/** Null where nothing was chosen, or where the browser refuses to look. */
export function readSetting(name: string): string | null {
  try {
    return globalThis.localStorage.getItem(PREFIX + name);
  } catch {
    return null;
  }
}

/** The first of the options where nothing was chosen, or nothing that this build knows. */
export function chosenOf<T extends string>(name: string, options: readonly [T, ...T[]]): T {
  const kept = readSetting(name);
  return options.find((option) => option === kept) ?? options[0];
}

/** Returns false when the choice could not be kept. */
export function writeSetting(name: string, value: string): boolean {
  try {
    globalThis.localStorage.setItem(PREFIX + name, value);
    return true;
  } catch {
    return false;
  }
}

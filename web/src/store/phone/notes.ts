// Small notes outside IndexedDB, which outlive a damaged or emptied database.
import { STORE } from "./which";

const PREFIX = `${STORE}.`;

function storage(): Storage | null {
  try {
    return globalThis.localStorage;
  } catch {
    // Some private windows refuse even the look at it.
    return null;
  }
}

/** Null where nothing was noted, or where the note cannot be read. */
export function readNote(name: string): unknown {
  try {
    const text = storage()?.getItem(PREFIX + name) ?? null;
    return text === null ? null : JSON.parse(text);
  } catch {
    return null;
  }
}

/** Returns false when the note could not be kept. */
export function writeNote(name: string, value: unknown): boolean {
  try {
    storage()?.setItem(PREFIX + name, JSON.stringify(value));
    return storage() !== null;
  } catch {
    return false;
  }
}

export function dropNote(name: string): void {
  try {
    storage()?.removeItem(PREFIX + name);
  } catch {
    // Nothing to drop where nothing can be kept.
  }
}

/** Of this shop's notes those whose names begin so. */
export function noteNames(first: string): readonly string[] {
  const names = Object.keys(storage() ?? {}).filter((name) => name.startsWith(PREFIX + first));
  return names.map((name) => name.slice(PREFIX.length));
}

/** Every note of this shop. */
export function dropAllNotes(): void {
  for (const name of noteNames("")) dropNote(name);
}

/** Names every note that another window of this app has written or dropped. */
export function followNotes(changed: (name: string) => void): void {
  window.addEventListener("storage", ({ key }) => {
    if (key?.startsWith(PREFIX) === true) changed(key.slice(PREFIX.length));
  });
}

// Forms under way. Kept in localStorage and not in the session: a phone ends a page in the background,
// and half a walk must still be there afterwards. A draft is never an entry.

const PREFIX = "pailwright.draft.";

function storage(): Storage | null {
  try {
    return globalThis.localStorage;
  } catch {
    // Some private windows refuse even the look at it; then a draft lives as long as the page.
    return null;
  }
}

export function readDraft(name: string): unknown {
  try {
    const text = storage()?.getItem(PREFIX + name) ?? null;
    return text === null ? null : JSON.parse(text);
  } catch {
    return null;
  }
}

/** Returns false when the draft could not be kept; the form itself still holds what was typed. */
export function writeDraft(name: string, value: unknown): boolean {
  try {
    storage()?.setItem(PREFIX + name, JSON.stringify(value));
    return storage() !== null;
  } catch {
    return false;
  }
}

export function dropDraft(name: string): void {
  try {
    storage()?.removeItem(PREFIX + name);
  } catch {
    // Nothing to drop where nothing can be kept.
  }
}

/** Names every draft that another window of this app has written or dropped. */
export function followDrafts(changed: (name: string) => void): void {
  window.addEventListener("storage", ({ key }) => {
    if (key?.startsWith(PREFIX) === true) changed(key.slice(PREFIX.length));
  });
}

// Whether the browser has promised to keep the data. Asked after the first saved entry, when there is
// something to keep; the answer is shown in words.
import { signal, type ReadonlySignal } from "@preact/signals";

export type Keeping = "kept" | "may_go" | "unknown";

const answer = signal<Keeping>("unknown");
export const keeping: ReadonlySignal<Keeping> = answer;

/** Old engines and plain http have no storage manager at all, whatever the types say. */
function manager(): StorageManager | undefined {
  return (navigator as { storage?: StorageManager }).storage;
}

async function settle(ask: (storage: StorageManager) => Promise<boolean>): Promise<void> {
  const storage = manager();
  if (storage === undefined) return;
  try {
    answer.value = (await ask(storage)) ? "kept" : "may_go";
  } catch {
    answer.value = "unknown";
  }
}

export function askToKeep(): Promise<void> {
  return answer.value === "kept" ? Promise.resolve() : settle((storage) => storage.persist());
}

export function readKeeping(): Promise<void> {
  return settle((storage) => storage.persisted());
}

const KEYS = {
  kept: "keeping.kept",
  may_go: "keeping.may_go",
  unknown: "keeping.unknown",
} as const;

/** The sentence about it. */
export function keepingKey(): (typeof KEYS)[Keeping] {
  return KEYS[answer.value];
}

// Why the phone could not store or read.

/**
 * `blocked`: another window holds an older version open. `newer`: this page is older than the data.
 * `insecure`: the page came over plain http. `framed`: it stands inside another site's page.
 */
export type StoreTrouble =
  "blocked" | "newer" | "refused" | "full" | "insecure" | "framed" | "other";

export class StoreError extends Error {
  readonly trouble: StoreTrouble;

  constructor(trouble: StoreTrouble, cause?: unknown) {
    super(trouble, { cause });
    this.name = "StoreError";
    this.trouble = trouble;
  }
}

export function troubleOf(error: unknown): StoreTrouble {
  if (error instanceof StoreError) return error.trouble;
  const name = error instanceof Error || error instanceof DOMException ? error.name : "";
  if (name === "QuotaExceededError") return "full";
  if (name === "VersionError") return "newer";
  return name === "SecurityError" || name === "InvalidStateError" ? "refused" : "other";
}

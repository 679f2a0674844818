import { createHash } from "node:crypto";

/** A file's hash in the form of an integrity attribute. */
export const integrityOf = (bytes: Uint8Array): string =>
  `sha256-${createHash("sha256").update(bytes).digest("base64")}`;

const sha256 = (bytes: Uint8Array): Buffer => createHash("sha256").update(bytes).digest();

/** The digest of the digests of a file's parts, as the worker works it out (`src/core/digest.ts`). */
export function digestOfParts(bytes: Uint8Array, part_bytes: number): string {
  const parts = Array.from({ length: Math.ceil(bytes.length / part_bytes) }, (_, i) =>
    sha256(bytes.subarray(i * part_bytes, (i + 1) * part_bytes)),
  );
  return sha256(Buffer.concat(parts)).toString("base64");
}

/** Hash of several texts, in hexadecimal. */
export const digestOf = (texts: readonly string[]): string =>
  createHash("sha256").update(texts.join("\n")).digest("hex");

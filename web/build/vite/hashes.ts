import { createHash } from "node:crypto";

/** A file's hash in the form of an integrity attribute. */
export const integrityOf = (bytes: Uint8Array): string =>
  `sha256-${createHash("sha256").update(bytes).digest("base64")}`;

/** Hash of several texts, in hexadecimal. */
export const digestOf = (texts: readonly string[]): string =>
  createHash("sha256").update(texts.join("\n")).digest("hex");

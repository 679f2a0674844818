const ALGORITHM = "SHA-256";
const DIGEST_BYTES = 32;

function inBase64(digest: Uint8Array): string {
  return btoa(String.fromCharCode(...digest));
}

/** In the form of an integrity attribute, as the build writes it. */
export async function integrityOf(bytes: BufferSource): Promise<string> {
  return `sha256-${inBase64(new Uint8Array(await crypto.subtle.digest(ALGORITHM, bytes)))}`;
}

/**
 * The digest of the digests of parts of `part_bytes` each. The engine copies what it hashes, and for
 * a large file fetching that much memory from the system takes as long as the hash.
 */
export async function digestOfParts(bytes: ArrayBuffer, part_bytes: number): Promise<string> {
  const digests = new Uint8Array(Math.ceil(bytes.byteLength / part_bytes) * DIGEST_BYTES);
  for (let at = 0, i = 0; at < bytes.byteLength; at += part_bytes, i += DIGEST_BYTES) {
    const part = new Uint8Array(bytes, at, Math.min(part_bytes, bytes.byteLength - at));
    digests.set(new Uint8Array(await crypto.subtle.digest(ALGORITHM, part)), i);
  }
  return inBase64(new Uint8Array(await crypto.subtle.digest(ALGORITHM, digests)));
}

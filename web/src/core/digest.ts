/** SHA-256 in the form of an integrity attribute, as the build writes it. Worked out beside this thread. */
export async function integrityOf(bytes: BufferSource): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return `sha256-${btoa(String.fromCharCode(...digest))}`;
}

// 128 random bits, made when a form opens: pressing Save twice then means the same entry twice.

const BYTES = 16;

export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(BYTES));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

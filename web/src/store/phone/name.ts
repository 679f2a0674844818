// Who uses this phone, as it was last written: it stands ready in the next form, and may be changed.
import { readNote, writeNote } from "./notes";

export function ownName(): string {
  const name = readNote("name");
  return typeof name === "string" ? name : "";
}

export function keepName(name: string): void {
  writeNote("name", name);
}

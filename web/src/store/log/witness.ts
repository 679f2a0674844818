// What the page remembers of the log's end outside the database. A chain that lost its end is still a
// whole chain: only somebody who knew the end can tell.
import { dropNote, readNote, writeNote } from "../phone/notes";

/** The last line of a log: its number and hash. */
export interface Head {
  readonly log: string;
  readonly count: number;
  readonly head: string;
}

const WITNESS = "witness";
const LACKING = "lacking";

export function isHead(value: unknown): value is Head {
  if (value === null || typeof value !== "object") return false;
  const { log, count, head } = value as Partial<Head>;
  return typeof log === "string" && typeof count === "number" && typeof head === "string";
}

export function readWitness(): Head | null {
  const note = readNote(WITNESS);
  return isHead(note) ? note : null;
}

/** Ends of logs that were written here and then were not there any more. */
export function readLacking(): readonly Head[] {
  const note = readNote(LACKING);
  return Array.isArray(note) ? note.filter(isHead) : [];
}

/** Kept before anything else is changed: a page that ends in between must not end the alarm. */
export function noteLacking(head: Head): void {
  const others = readLacking().filter(({ log }) => log !== head.log);
  writeNote(LACKING, [...others, head]);
}

/** A person has read the alarm and goes on without what is missing. */
export function dropLacking(): void {
  dropNote(LACKING);
}

/** After the log was closed: nothing is known yet of the end of the new one. */
export function dropWitness(): void {
  dropNote(WITNESS);
}

/** What a page still knows when the notes were deleted with the data. */
export function noteIfGone(head: Head): void {
  if (readWitness() === null && head.count > 0) writeNote(WITNESS, head);
}

/**
 * Moves on only: a slower window must not put an older end over a later one of the same log. Where
 * another log stood there, the database was lost while the page was open.
 */
export function noteWitness(head: Head): void {
  const known = readWitness();
  if (known !== null && known.log === head.log && known.count >= head.count) return;
  if (known !== null && known.log !== head.log) noteLacking(known);
  writeNote(WITNESS, head);
}

// A line of the log as pycore reads it: schema 2, chained to the line before and sealed at its end.
import {
  BESIDE,
  ENTRY_SCHEMA,
  isAbout,
  isTold,
  storedKind,
  type AboutContent,
  type AnyContent,
  type Storable,
} from "./entry";
import { StoreError } from "./trouble";
import type { ToldContent } from "../written/told";

const SEAL = /,"hash":"([0-9a-f]{64})"\}$/;

/** The end of a log: what the next line is chained to. The empty log has number 0 and no text. */
export interface End {
  readonly log: string;
  readonly seq: number;
  readonly text: string;
}

/** Only what was told: no copy of the set-up, and nothing was shown. Of the whole shop: no machine. */
function toldFields({
  kind,
  machine,
  measured_at,
  wall,
  by,
  body,
  shown,
  versions,
}: (ToldContent | AboutContent) & { readonly shown?: object }) {
  return {
    kind,
    machine: machine === "" ? undefined : machine,
    measured_at,
    wall,
    by,
    body,
    shown,
    versions,
  };
}

/** What stands in the body of the line of an entry. */
export function bodyOf(content: AnyContent): object {
  return fieldsOf(content).body;
}

/** Named, so that fields of an older build's draft cannot slip into a line. */
function fieldsOf(content: Storable) {
  if (isAbout(content) || isTold(content)) return toldFields(content);
  const beside = content as AnyContent &
    Readonly<Partial<Record<(typeof BESIDE)[number], unknown>>>;
  const inside = BESIDE.filter((name) => beside[name] !== undefined);
  return {
    kind: storedKind(content.kind),
    machine: content.machine,
    measured_at: content.measured_at,
    wall: content.wall,
    by: content.by,
    body: { ...content.body, ...Object.fromEntries(inside.map((name) => [name, beside[name]])) },
    ...("shown" in content ? { shown: content.shown } : {}),
    versions: content.versions,
  };
}

/** Whether a second try holds the same as what was stored; where it stands does not count. */
export function holdsTheSame(one: Storable, other: Storable): boolean {
  return JSON.stringify(fieldsOf(one)) === JSON.stringify(fieldsOf(other));
}

/** SHA-256 of a text as UTF-8, as 64 hexadecimal digits. */
export async function hashOf(text: string): Promise<string> {
  const subtle = (crypto as { subtle?: SubtleCrypto }).subtle;
  // Plain http has none; and nothing may be stored there, since it could not be sealed.
  if (subtle === undefined) throw new StoreError("insecure");
  const digest = await subtle.digest("SHA-256", new TextEncoder().encode(text));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** The seal at a line's end; null for a row of schema 1. */
export function sealOf(text: string): string | null {
  return SEAL.exec(text)?.[1] ?? null;
}

/** The hash of a stored line: its seal, or for a row of schema 1 the seal that an export gives it. */
export function hashOfLine(text: string): Promise<string> {
  const seal = sealOf(text);
  return seal === null ? hashOf(text) : Promise.resolve(seal);
}

function clockFlags(wall: string, before: string): string[] {
  if (before === "") return [];
  const last = (JSON.parse(before) as { wall?: unknown }).wall;
  if (typeof last !== "string") return [];
  const offset = (iso: string): string => iso.slice(-6);
  return [
    ...(Date.parse(wall) < Date.parse(last) ? ["back"] : []),
    ...(offset(wall) === offset(last) ? [] : ["zone"]),
  ];
}

/** The text of the line that follows `end`. */
export async function lineAfter(end: End, content: Storable): Promise<string> {
  const { kind, machine, measured_at, wall, by, body, shown, versions } = fieldsOf(content);
  const text = JSON.stringify({
    id: content.id,
    log: end.log,
    seq: end.seq + 1,
    prev: end.seq === 0 ? "" : await hashOfLine(end.text),
    schema: ENTRY_SCHEMA,
    kind,
    machine,
    measured_at,
    wall,
    clock_flags: clockFlags(wall, end.text),
    by,
    body,
    ...(shown === undefined ? {} : { shown }),
    versions,
  });
  return `${text.slice(0, -1)},"hash":"${await hashOf(text)}"}`;
}

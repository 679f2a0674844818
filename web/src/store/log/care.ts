// What of a machine's log a due clean-out can depend on, beside its last clean-out: the last pH and dip
// slide, two smells, and the pH of the first fill. So neither list nor start need the whole log for it.
import { isOfDeed, type AnyEntry } from "./entry";

/** How many of the latest count, by what is looked for. */
const COUNTED = { ph: 1, "dip slide": 1, smell: 2, "first pH": 1 } as const;
type Care = keyof typeof COUNTED;

/** The most of one kind that pycore's table asks for. */
export function mostOf(what: string): number {
  return what in COUNTED ? COUNTED[what as Care] : 1;
}

export function careOf(entry: AnyEntry): readonly Care[] {
  if (isOfDeed(entry) || entry.kind !== "check") return [];
  return [
    ...(entry.ph === undefined ? [] : ["ph" as const]),
    ...(entry.dip_slide?.germs === undefined ? [] : ["dip slide" as const]),
    ...(entry.look?.includes("smell") === true ? ["smell" as const] : []),
    ...(entry.first_fill_ph === undefined ? [] : ["first pH" as const]),
  ];
}

/** Ids of the first check with a pH after each machine's last clean-out, in the order of the entries. */
export function firstPhs(entries: readonly AnyEntry[]): ReadonlySet<string> {
  const first = new Map<string, string | null>();
  for (const entry of entries) {
    if (isOfDeed(entry)) continue;
    if (entry.kind === "clean_out" && entry.body.finished) first.set(entry.machine, null);
    const isFirst = first.get(entry.machine) === null && careOf(entry).includes("ph");
    if (isFirst) first.set(entry.machine, entry.id);
  }
  return new Set([...first.values()].filter((id) => id !== null));
}

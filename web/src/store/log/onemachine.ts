// What pycore is sent about one machine: its own lines, those that amend or decide about them, and the
// facts of the shop. The whole log of a shop would take seconds.
import { lines } from "./journal";

export function linesOf(machine: string): string[] {
  const own = new Set(lines.value.filter((line) => line.machine === machine).map(({ id }) => id));
  return lines.value
    .filter(({ machine: of, id, amends, entry }) =>
      of === "" ? own.has(amends) || entry === null || entry.kind === "shop_set" : own.has(id),
    )
    .map(({ text }) => text);
}

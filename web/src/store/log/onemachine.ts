// What pycore is sent about one machine: its own lines, those that amend or decide about them, and the
// facts of the shop. The whole log of a shop would take seconds.
import { withClaimed } from "./forks";
import { forks, lines } from "./journal";

export function linesOf(machine: string): string[] {
  const all = lines.value;
  const own = new Set(all.filter((line) => line.machine === machine).map(({ id }) => id));
  const sent = all.filter(({ machine: of, id, amends, entry }) =>
    of === "" ? own.has(amends) || entry === null || entry.kind === "shop_set" : own.has(id),
  );
  const claimed = withClaimed(sent, forks.value);
  return all.filter((line) => claimed.has(line)).map(({ text }) => text);
}

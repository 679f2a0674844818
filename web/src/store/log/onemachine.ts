// What pycore is sent about one machine: its own lines, those that amend or decide about them, and the
// facts of the shop. The whole log of a shop would take seconds.
import { forks, lines } from "./journal";

export function linesOf(machine: string): string[] {
  const all = lines.value;
  const own = new Set(all.filter((line) => line.machine === machine).map(({ id }) => id));
  // A line of another machine may claim the place of one of this: alone it would seem certain.
  const claimed = new Set(
    forks.value
      .map((fork) => fork.lines)
      .filter((them) => them.some(({ id }) => own.has(id)))
      .flat(),
  );
  return all
    .filter((line) => {
      const { machine: of, id, amends, entry } = line;
      if (claimed.has(line)) return true;
      return of === ""
        ? own.has(amends) || entry === null || entry.kind === "shop_set"
        : own.has(id);
    })
    .map(({ text }) => text);
}

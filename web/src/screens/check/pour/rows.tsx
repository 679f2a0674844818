// What went in, as the log has it, in words.
import type { BucketRow } from "../../../store/written/deed";
import { writeTyped } from "../../../words/numbers";
import { say, sayCount } from "../../../words/say";

function amountsOf({ kind, water, concentrate, each, strength }: BucketRow): string {
  const blanks = {
    water: water === undefined ? "" : writeTyped(water),
    concentrate: concentrate === undefined ? "" : writeTyped(concentrate),
    fluid: each === undefined ? "" : writeTyped(each),
    total: each === undefined ? "" : writeTyped(each),
    strength: strength === undefined ? "" : writeTyped(strength),
  };
  if (kind === "own_fluid") return say("recipe.own_fluid", blanks);
  if (kind === "ready_mix") return say("recipe.ready_mix", blanks);
  if (kind === "unknown") return say("pour.row_unknown");
  if (water !== undefined && concentrate !== undefined) return say("recipe.both", blanks);
  if (concentrate !== undefined) return say("recipe.concentrate_only", blanks);
  if (water !== undefined) return say("recipe.water_only", blanks);
  return kind === "water" ? say("pour.row_hose", blanks) : say("pour.row_mix", blanks);
}

function rowText(row: BucketRow): string {
  const key = row.about === true ? "pour.row_about" : "pour.row";
  return sayCount(key, row.count, { amounts: amountsOf(row) });
}

interface RowListProps {
  readonly rows: readonly BucketRow[];
  /** Other parts of the recipe stand in the log already. */
  readonly isPart?: boolean;
}

export function RowList({ rows, isPart = false }: RowListProps) {
  return (
    <section class="last-check" role="status">
      <h2>{say(isPart ? "stop.this_part" : "stop.so_far")}</h2>
      {rows.length === 0 ? <p>{say("stop.none")}</p> : null}
      <ul class="facts">
        {rows.map((row) => (
          <li key={JSON.stringify(row)}>{rowText(row)}</li>
        ))}
      </ul>
    </section>
  );
}

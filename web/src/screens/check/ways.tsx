// The other ways, one row each that opens in place: what to do, and what it gives.
import type { WayShown } from "../../core/messages";
import { cautionSentence, wayReason, wayTitle } from "../../words/codes";
import { write } from "../../words/numbers";
import { say, sayCount } from "../../words/say";
import { amountsOf } from "./amounts";

function stepsOf(way: WayShown): readonly string[] {
  const lines: string[] = [];
  if (way.take_out !== undefined) lines.push(say("ways.take_out", { amount: write(way.take_out) }));
  if (way.run_in !== undefined) {
    const amount = write(way.run_in);
    lines.push(
      way.setting === undefined
        ? say("ways.hose", { amount })
        : say("ways.unit", { amount, setting: write(way.setting) }),
    );
  }
  if (way.level !== undefined && way.level_strength !== undefined) {
    const blanks = { level: write(way.level), strength: write(way.level_strength) };
    lines.push(say("ways.wait_level", blanks));
  }
  if (way.days !== undefined) lines.push(sayCount("ways.wait_days", way.days));
  for (const pour of way.pours)
    lines.push(sayCount("ways.pour", pour.count, { amounts: amountsOf(pour) }));
  return lines;
}

/** A way that only waits has no result of its own to promise. */
function resultOf(way: WayShown): string | null {
  if (way.level !== undefined || way.days !== undefined) return null;
  return say("ways.result", {
    strength: write(way.strength),
    low: write(way.low),
    high: write(way.high),
    volume: write(way.volume),
  });
}

function Way({ way }: { readonly way: WayShown }) {
  const result = resultOf(way);
  return (
    <details class="way">
      <summary>{wayTitle(way.why)}</summary>
      <p>{wayReason(way.why)}</p>
      <ul>
        {stepsOf(way).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {result === null ? null : <p>{result}</p>}
      {way.take_out === undefined ? null : <p>{cautionSentence("taken_out_is_waste")}</p>}
    </details>
  );
}

export function Ways({ ways }: { readonly ways: readonly WayShown[] }) {
  if (ways.length === 0) return null;
  return (
    <section class="ways">
      <h2>{say("ways.title")}</h2>
      {ways.map((way) => (
        <Way key={way.why} way={way} />
      ))}
    </section>
  );
}

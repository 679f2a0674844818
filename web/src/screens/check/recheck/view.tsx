// Expected against found, and what a difference can come from. The log shows the stored one the same way.
import type { RecheckResult } from "../../../core/messages";
import { StateMark } from "../../../elements/statemark";
import type { State } from "../../../words/codes";
import { write, writeNumber } from "../../../words/numbers";
import { isKey, say, sayCount } from "../../../words/say";

function Reason({
  code,
  shown,
}: {
  readonly code: string;
  readonly shown: RecheckResult["shown"];
}) {
  const key = `recheck_reason.${code}`;
  const blanks = {
    implied: shown.implied_volume === undefined ? "" : write(shown.implied_volume),
    before: shown.before_volume === undefined ? "" : write(shown.before_volume),
  };
  return <li>{isKey(key) ? say(key, blanks) : code.replaceAll("_", " ")}</li>;
}

function Compared({ result }: { readonly result: RecheckResult }) {
  const { strength, shown } = result;
  if (strength === undefined || shown.expected === undefined || shown.found === undefined)
    return <p class="plain-lead">{say("recheck.unknown")}</p>;
  const blanks = { expected: write(shown.expected), found: write(shown.found) };
  const difference = shown.difference === undefined ? "" : writeNumber(shown.difference);
  return (
    <>
      <p class="recheck-found">{say("recheck.found", blanks)}</p>
      <p class="plain-lead" role="status">
        {say(`recheck.${strength.verdict}`, { difference })}
      </p>
    </>
  );
}

function Level({ result }: { readonly result: RecheckResult }) {
  const { level, shown } = result;
  const { level_expected: expected, level_found: found } = shown;
  if (level === undefined || expected === undefined || found === undefined) return null;
  const blanks = { expected: write(expected), found: write(found) };
  const key = level.verdict === "as_expected" ? "recheck.level_as_expected" : "recheck.level";
  return <p>{say(key, blanks)}</p>;
}

/** Whoever doses by a reading of what has not mixed doses twice. */
function nextWords(state: Exclude<State, "poured" | "stop">, isEarly: boolean): string {
  if (state === "none" || !isEarly) return say(`recheck.next.${state}`);
  return say(state === "in_range" ? "recheck.next.in_range_early" : "recheck.next.off_early");
}

interface ViewProps {
  readonly result: RecheckResult;
  /** Read before the pump could mix it: it may still leave its range or come into it. */
  readonly isEarly: boolean;
}

export function RecheckView({ result, isEarly }: ViewProps) {
  const state = result.assessment.strength?.state ?? "none";
  const reasons = result.reasons.filter((code) => code !== "unknown_poured");
  return (
    <section class="plain-page">
      <StateMark state={state} />
      <Compared result={result} />
      <Level result={result} />
      <p class="plain-lead">{nextWords(state, isEarly)}</p>
      {reasons.length === 0 ? null : (
        <section class="cautions">
          <h2>{say("recheck.why")}</h2>
          <ul>
            {reasons.map((code) => (
              <Reason key={code} code={code} shown={result.shown} />
            ))}
          </ul>
        </section>
      )}
      <p class="note">{sayCount("recheck.minutes", Math.floor(result.minutes))}</p>
      <p class="note">{say("recipe.sheet")}</p>
    </section>
  );
}

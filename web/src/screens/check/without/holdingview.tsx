// A top-up without a reading as shown; the log shows the stored one with the same view.
import type { HoldCheckBody, HoldCheckResult } from "../../../core/messages";
import { BucketRow } from "../../../elements/drawings/bucket";
import { PlaceLink } from "../../../elements/buttons";
import { SectionDrawing } from "../../../elements/drawings/section";
import { StateShape } from "../../../elements/statemark";
import { assumedSentence } from "../../../words/codes";
import { write, writeNumber } from "../../../words/numbers";
import { say, sayCount } from "../../../words/say";
import { writeAgo } from "../../../words/times";
import { Buckets } from "../recipe/pours";
import { Cautions } from "../recipe/recipeview";

interface HoldingProps {
  readonly result: HoldCheckResult;
  readonly body: HoldCheckBody;
  /** Where the usual strength can still be changed; the log has no such place. */
  readonly toUsual?: string;
}

function ToPour({ result }: Pick<HoldingProps, "result">) {
  const { pours } = result.shown;
  const { buckets } = result.holding.totals;
  if (pours.length === 0) return <p>{say("hold.nothing")}</p>;
  return (
    <>
      <BucketRow pours={pours} name={sayCount("recipe.row", buckets)} />
      <Buckets pours={pours} />
    </>
  );
}

/** How strong it may be afterwards, in words: a number alone would look like a promise. */
function Worst({ result, body }: HoldingProps) {
  const { low, high, last, band_low, band_high } = result.shown;
  const at = body.read?.at ?? body.last?.at;
  const band = say("hold.band", { low: write(band_low), high: write(band_high) });
  if (low === undefined || high === undefined || last === undefined || at === undefined) {
    return (
      <section class="worst">
        <h2>{say("hold.after")}</h2>
        <p>{say("hold.unknown")}</p>
        <p class="note">{band}</p>
      </section>
    );
  }
  const since = { strength: write(last), ago: writeAgo(at, new Date(body.now)) };
  return (
    <section class="worst">
      <h2>{say("hold.after")}</h2>
      <p class="plain-lead">{say("hold.worst", { low: write(low), high: write(high) })}</p>
      <p class="note">{band}</p>
      <p class="note">{say("hold.since", since)}</p>
    </section>
  );
}

function Usual({ result, toUsual }: HoldingProps) {
  const label = say("hold.usual");
  const { usual, poured } = result.shown;
  return (
    <dl class="answer-list">
      <div class="answer-row">
        <dt>{label}</dt>
        <dd>
          <span class="answer-value">{write(usual)}</span>
          {poured === undefined ? null : (
            <span class="note">{say("hold.poured", { strength: write(poured) })}</span>
          )}
        </dd>
        {toUsual === undefined ? null : (
          <dd class="answer-change">
            <PlaceLink to={toUsual} label={say("answers.change_this", { field: label })}>
              {say("change")}
            </PlaceLink>
          </dd>
        )}
      </div>
    </dl>
  );
}

function Reasons({ result }: Pick<HoldingProps, "result">) {
  const { shown, assessment, assumed } = result;
  const level = assessment.level?.shown;
  // Where nothing is poured, no mix was chosen.
  const mattering = assumed.filter((code) => shown.pours.length > 0 || !code.startsWith("usual_"));
  const lines = [
    level === undefined
      ? ""
      : say("reason.dip", { depth: write(level.depth), volume: write(level.volume) }),
    shown.fill_to === undefined ? "" : say("hold.fill", { mark: write(shown.fill_to) }),
    ...mattering.map((code) =>
      assumedSentence(code, { drift: shown.drift === undefined ? "" : writeNumber(shown.drift) }),
    ),
  ].filter((line) => line !== "");
  return (
    <section class="reasons">
      <h2>{say("reason.title")}</h2>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

export function HoldingView(props: HoldingProps) {
  const { result } = props;
  const { pours } = result.shown;
  return (
    <>
      <p class="recipe-sentence" role="status">
        <StateShape state="none" />
        <span>{say("hold.lead")}</span>
      </p>
      <ToPour result={result} />
      {pours.length === 0 ? null : <Usual {...props} />}
      <Worst {...props} />
      {pours.length === 0 ? null : (
        <figure>
          <SectionDrawing
            name={say("recipe.after_drawing")}
            section={result.after}
            fullWord={say("drawn.full")}
          />
          <figcaption class="note">
            {say("hold.volume", { volume: write(result.shown.volume) })}
          </figcaption>
        </figure>
      )}
      <Reasons result={result} />
      <Cautions codes={result.holding.cautions} />
    </>
  );
}

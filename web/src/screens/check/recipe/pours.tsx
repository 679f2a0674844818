// What is poured, in pouring order: the first kind of bucket large, the others in one line each.
import type { PourShown, Shown } from "../../../core/messages";
import { Amount } from "../../../elements/amount";
import { write } from "../../../words/numbers";
import { say, sayCount } from "../../../words/say";
import { amountsOf, type Writer } from "./amounts";
import type { HalfWay, Recipe } from "./chosen";

interface Line {
  readonly word: string;
  readonly amount: Shown;
}

function linesOf(pour: PourShown): readonly Line[] {
  if (pour.kind === "ready_mix") return [{ word: say("amount.ready_mix"), amount: pour.total }];
  const carrier =
    pour.fluid === undefined
      ? { word: say("amount.water"), amount: pour.water }
      : { word: say("amount.own_fluid"), amount: pour.fluid };
  return [carrier, { word: say("amount.concentrate"), amount: pour.concentrate }].filter(
    ({ amount }) => amount.value > 0,
  );
}

/** How the concentrate is measured, where one jug is not enough or the bucket's own marks do it. */
export function concentrateBy(
  { jugs, pail_mark, concentrate }: PourShown,
  put: Writer = write,
): string | null {
  if (concentrate.value === 0) return null;
  if (pail_mark !== undefined) return say("recipe.to_mark", { mark: put(pail_mark) });
  if (jugs === undefined) return null;
  const key = jugs.rest.value === 0 ? "recipe.full_jugs" : "recipe.jugs";
  return sayCount(key, jugs.count, { rest: put(jugs.rest) });
}

/** What comes before the first bucket: coolant out, water by the hose, or the mixing unit's mix. */
function Before({ recipe }: { readonly recipe: Recipe }) {
  const { takeOut, runIn, setting } = recipe;
  const lines: readonly (Line | null)[] = [
    takeOut === null ? null : { word: say("amount.take_out"), amount: takeOut },
    setting === null ? null : { word: say("amount.setting"), amount: setting },
    runIn === null
      ? null
      : { word: setting === null ? say("amount.hose") : say("amount.mix"), amount: runIn },
  ];
  const shown = lines.filter((line) => line !== null);
  if (shown.length === 0) return null;
  return (
    <section class="pours">
      <h2>{recipe.pours.length === 0 ? say("recipe.do_this") : say("recipe.first")}</h2>
      {shown.map(({ word, amount }, i) => (
        <Amount key={word} order={String(i + 1)} word={word} amount={amount} />
      ))}
    </section>
  );
}

interface BucketsProps {
  readonly pours: readonly PourShown[];
  readonly halfWay?: HalfWay | null;
}

function Rest({ pours, halfWay = null }: BucketsProps) {
  const [first, ...rest] = pours;
  if (first === undefined || rest.length === 0) return null;
  const stop =
    halfWay === null ? null : (
      <p class="pours-stop">{say("recipe.half_way", { minutes: String(halfWay.minutes) })}</p>
    );
  return (
    <>
      <p class="pours-rest">{sayCount("recipe.like_this", first.count)}</p>
      {rest.map((pour, i) => (
        <div key={i}>
          {halfWay?.after === i + 1 ? stop : null}
          <p class="pours-rest">
            {sayCount("recipe.plus", pour.count, { amounts: amountsOf(pour) })}
          </p>
        </div>
      ))}
    </>
  );
}

/** Every bucket's amounts, and nothing of what comes before. */
export function Buckets({ pours, halfWay = null }: BucketsProps) {
  const [first] = pours;
  if (first === undefined) return null;
  const notes = [
    first.fluid === undefined ? null : say("recipe.from_sump"),
    concentrateBy(first),
  ].filter((note) => note !== null);
  return (
    <section class="pours">
      <h2>{sayCount("recipe.each", first.count)}</h2>
      {linesOf(first).map(({ word, amount }, i) => (
        <Amount key={word} order={String(i + 1)} word={word} amount={amount} />
      ))}
      {notes.map((note) => (
        <p key={note} class="pours-measure">
          {note}
        </p>
      ))}
      <Rest pours={pours} halfWay={halfWay} />
      <p class="note">{say("recipe.weight", { weight: write(first.weight) })}</p>
    </section>
  );
}

export function Pours({ recipe }: { readonly recipe: Recipe }) {
  return (
    <>
      <Before recipe={recipe} />
      <Buckets pours={recipe.pours} halfWay={recipe.halfWay} />
    </>
  );
}

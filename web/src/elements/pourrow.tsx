// Where one is in a pour: every bucket small (done with a tick, now thick, to come dashed), and the one
// in the hand large, filled as far as it is.
import type { PourShown } from "../core/messages";
import { halfAt, slice, yAt } from "./drawings/bucket";

/** More than this many buckets are counted in words alone. */
const MOST_DRAWN = 12;
const OUTLINE = "M4 6L9 36H27L32 6M1 6H35";

interface RowProps {
  readonly steps: readonly { readonly state: string }[];
  /** Counted from 0. */
  readonly now: number;
  readonly poured: number;
  readonly name: string;
}

export function PourRow({ steps, now, poured, name }: RowProps) {
  const total = steps.filter(({ state }) => state === "poured").length;
  if (total > MOST_DRAWN) return <p class="note">{name}</p>;
  return (
    <div class="pour-row" role="img" aria-label={name}>
      {Array.from({ length: total }, (_, i) => {
        const kind = i < poured ? "done" : i === now ? "now" : "to-come";
        return (
          <svg key={i} class={`pour-small pour-${kind}`} viewBox="-1 0 38 40" aria-hidden="true">
            <path d={OUTLINE} />
            {kind === "done" ? <path d="M10 20l6 7 11 -14" class="pour-tick" /> : null}
          </svg>
        );
      })}
    </div>
  );
}

interface BucketProps {
  readonly pour: PourShown;
  readonly state: string;
}

/** The bucket's middle in its drawing. */
const MIDDLE = 28;

/** The mark that is filled to now: a bright line across the bucket, and a pointer beside it. */
function Mark({ share }: { readonly share: number }) {
  const y = yAt(share);
  const half = halfAt(y);
  const [left, right] = [MIDDLE - half, MIDDLE + half];
  return <path class="pour-mark" d={`M${left} ${y}H${right}m2 0l9 -5v10z`} />;
}

/** What is in the bucket while this state is reached. */
export function PourBucket({ pour, state }: BucketProps) {
  const [water, top] = [pour.water_share, pour.water_share + pour.concentrate_share];
  const isMixed = state === "stirred" || state === "poured";
  const mark = state === "concentrate" ? top : water;
  return (
    <svg class="pour-bucket" viewBox="0 0 66 64" aria-hidden="true">
      {water > 0 ? <path d={slice(0, water)} class="bucket-water" /> : null}
      {water > 0 ? <path d={slice(0, water)} fill="url(#water)" /> : null}
      {top > water && state !== "water" ? (
        <path
          d={isMixed ? slice(0, top) : slice(water, top)}
          class="pour-mix"
          data-mixed={isMixed}
        />
      ) : null}
      <path d="M2 8L9 60H47L54 8" class="bucket-wall" />
      <path d="M0 8H56" class="bucket-wall" />
      {isMixed ? null : <Mark share={state === "ready_mix" ? top : mark} />}
    </svg>
  );
}

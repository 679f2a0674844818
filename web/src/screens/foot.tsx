// The foot of the list: whether it works without internet, whether a new version waits, and what to do
// when the calculator did not start. Facts from offline.ts, nothing promised ahead of them.
import { OtherAction } from "../elements/buttons";
import { ready, updateWaiting, useUpdate as takeUpdate } from "../offline";
import { opened } from "../store/log/journal";
import { isExample } from "../store/phone/which";
import { say, type Key } from "../words/say";
import { useCore } from "./core";

/** Served from the phone from the start: then working without internet is no news any more. */
const wasServedFromPhone =
  (navigator as { serviceWorker?: ServiceWorkerContainer }).serviceWorker?.controller != null;

/** The sentence about working without internet. */
export function readyKey(): Key {
  if (ready.value === "ready") return wasServedFromPhone ? "foot.works" : "foot.ready";
  if (ready.value === "damaged") return "foot.broken";
  if (ready.value === "unproven") return "foot.unproven";
  return ready.value === "unavailable" ? "foot.unavailable" : "foot.getting";
}

/** The calculator could not start: the log and the list still work, and a new try is one press away. */
export function CoreTrouble() {
  const core = useCore();
  if (core.phase.value.kind !== "failed") return null;
  return (
    <section class="plain-trouble" role="status">
      <p>{say("core.failed")}</p>
      <OtherAction
        onPress={() => {
          core.restart();
        }}
      >
        {say("again")}
      </OtherAction>
    </section>
  );
}

export function Foot() {
  return (
    <div class="foot">
      <CoreTrouble />
      <p role="status" class="note">
        {say(readyKey())}
      </p>
      {opened.value.kind === "ready" && !isExample ? <p class="note">{say("foot.where")}</p> : null}
      {updateWaiting.value ? (
        <p class="note update-line">
          {say("foot.update")}{" "}
          <button type="button" class="line-button" onClick={takeUpdate}>
            {say("foot.use_now")}
          </button>
        </p>
      ) : null}
    </div>
  );
}

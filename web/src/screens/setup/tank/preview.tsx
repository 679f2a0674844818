// What pycore makes of the tank typed so far: its outline filled to the full mark, and what one unit of
// the stick is worth there. A slip in a measure is seen before anything is poured.
import type { SumpTyped, Units } from "../../../core/messages";
import { SectionDrawing } from "../../../elements/drawings/section";
import { write } from "../../../words/numbers";
import { say } from "../../../words/say";
import { useResult } from "../../core";

interface PreviewProps {
  readonly sump: SumpTyped;
  readonly units: Units;
}

export function Preview({ sump, units }: PreviewProps) {
  const isGiven = sump.full_depth.text.trim() !== "";
  const dip = { depth: sump.full_depth, read_as: "depth" } as const;
  const result = useResult("assess_sump", isGiven ? { sump, units, dip } : null);
  const shown = result?.level?.shown;
  return (
    <section class="preview">
      <SectionDrawing
        name={say("preview.drawing")}
        section={result?.section ?? null}
        fullWord={say("drawn.full")}
      />
      <p class="live" role="status">
        {shown === undefined ? "" : say("preview.full", { volume: write(shown.full_volume) })}{" "}
        {shown?.one === undefined || shown.one_holds === undefined
          ? ""
          : say("preview.one", { one: write(shown.one), holds: write(shown.one_holds) })}
      </p>
    </section>
  );
}

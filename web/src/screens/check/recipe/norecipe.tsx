// Without a factor a reading is no per cent. Said plainly; what was measured can still be kept.
import { PlaceLink } from "../../../elements/buttons";
import { Page } from "../../../elements/page";
import { SectionDrawing } from "../../../elements/drawings/section";
import { assessBody } from "../../../store/underway/walk";
import { write } from "../../../words/numbers";
import { say } from "../../../words/say";
import { useResult } from "../../core";
import { address } from "../../route";
import { ENTER } from "../../setup/enter";
import { SaveAction } from "../notsaved";
import { useSaving } from "../save";
import type { CheckProps } from "../steps";

export function NoRecipe({ machine, walk, step, onBack }: CheckProps) {
  const typed = machine.body.machine;
  const assessment = useResult(
    "assess_sump",
    assessBody(typed, walk, { dip: true, reading: true }),
  );
  const { saving, press } = useSaving(machine, walk, assessment === null ? null : { assessment });
  const volume = assessment?.level?.shown.volume;
  const reading = assessment?.strength?.shown.reading;
  return (
    <Page
      title={say("no_factor.title")}
      place={typed.name}
      step={step}
      onBack={onBack}
      action={<SaveAction saving={saving} onPress={press} />}
    >
      <p>{say("no_factor.text")}</p>
      {assessment?.section === undefined ? null : (
        <SectionDrawing
          name={say("machine.drawing")}
          section={assessment.section}
          fullWord={say("drawn.full")}
        />
      )}
      <ul class="facts">
        {volume === undefined ? null : (
          <li>{say("no_factor.volume", { volume: write(volume) })}</li>
        )}
        {reading === undefined ? null : (
          <li>{say("no_factor.reading", { reading: write(reading) })}</li>
        )}
      </ul>
      <PlaceLink to={address("machines", machine.machine, "set-up", "factor", ENTER)}>
        {say("no_factor.enter")}
      </PlaceLink>
    </Page>
  );
}

// The whole set-up once more; pycore reads it as a whole before it is saved.
import type { Doubt } from "../../core/messages";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { DoubtQuestion } from "../../elements/doubt";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { doubtSentence, errorSentence } from "../../words/errors";
import { fieldFromPath, type SetupStep } from "../../words/fields";
import { write } from "../../words/numbers";
import { say } from "../../words/say";
import { NotSaved } from "../check/notsaved";
import { useCore } from "../core";
import { doubtName } from "../gate";
import { address, go } from "../route";
import { Groups } from "./groups";
import { machineOf, openChoice } from "./form";
import type { SetupProps } from "./steps";
import { useStoring } from "./storing";
import { useWhole, type Reading } from "./whole";

/** Settled doubts are remembered by path and number; the whole reading names them under the machine. */
function openDoubt(doubts: readonly Doubt[], kept: readonly string[]): Doubt | null {
  const settled = new Set(kept);
  const isOpen = (doubt: Doubt): boolean => {
    const name = doubtName(doubt);
    return !settled.has(name) && !settled.has(name.replace("body.machine.", "body."));
  };
  return doubts.find(isOpen) ?? null;
}

interface TroubleProps {
  readonly sentence: string;
  readonly field: string;
  readonly to: string;
}

/** What keeps the machine from being saved, and the way to the page that mends it. */
function Trouble({ sentence, field, to }: TroubleProps) {
  return (
    <section class="refused">
      <h2>{say("problem")}</h2>
      <Fault>{sentence}</Fault>
      <PlaceLink to={to}>{say("answers.change_this", { field })}</PlaceLink>
    </section>
  );
}

interface CheckStepProps extends SetupProps {
  readonly base: readonly string[];
  readonly onSaved: () => void;
}

function Doubted({ doubt, props }: { readonly doubt: Doubt; readonly props: CheckStepProps }) {
  const { form, change, base, place, step, onBack } = props;
  const { name, setup } = fieldFromPath(doubt.path);
  return (
    <Page title={say("setup_check.title")} place={place} step={step} onBack={onBack}>
      <DoubtQuestion
        sentence={doubtSentence(doubt)}
        again={say("doubt.change", { field: name })}
        keep={say("doubt.keep", { value: write(doubt.got) })}
        onAgain={() => {
          go(...base, setup ?? "name", "change");
        }}
        onKeep={() => {
          change({ kept: [...form.kept, doubtName(doubt)] });
        }}
      />
    </Page>
  );
}

interface NewsProps {
  readonly reading: Reading;
  readonly open: SetupStep | null;
  readonly base: readonly string[];
}

function News({ reading, open, base }: NewsProps) {
  if (open !== null) {
    const field = say(`setup_step.${open}`);
    const to = address(...base, open, "change");
    return <Trouble sentence={say("error.empty", { field })} field={field} to={to} />;
  }
  if (reading.kind === "waiting")
    return (
      <p role="status" class="note">
        {say("setup_check.reading")}
      </p>
    );
  if (reading.kind === "down") return <p role="alert">{say("recipe.down")}</p>;
  if (reading.kind === "read") return <Care cautions={reading.cautions} />;
  const { name, setup } = fieldFromPath(reading.error.path);
  const to = address(...base, setup ?? "name", "change");
  return <Trouble sentence={errorSentence(reading.error)} field={name} to={to} />;
}

/** What fluid, instrument and water are to be taken care of with. */
function Care({ cautions }: { readonly cautions: readonly string[] }) {
  if (cautions.length === 0) return null;
  return (
    <section class="cautions">
      <h2>{say("recipe.cautions")}</h2>
      <ul>
        {cautions.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </section>
  );
}

export function CheckStep(props: CheckStepProps) {
  const { form, onBack, place, step, base, onSaved } = props;
  const core = useCore();
  const machine = machineOf(form);
  const open = openChoice(form);
  const reading = useWhole(form, open === null);
  const { saving, store } = useStoring(form, onSaved);
  const result = reading.kind === "read" ? reading.machine : null;
  const doubt = reading.kind === "read" ? openDoubt(reading.doubts, form.kept) : null;
  if (doubt !== null) return <Doubted doubt={doubt} props={props} />;
  const isDown = reading.kind === "down";
  const press = (): void => {
    if (isDown) core.restart();
    else if (result !== null && saving.kind !== "saving") void store(result);
  };
  const word = isDown || saving.kind === "not_saved" ? say("again") : say("setup_check.save");
  const action = (
    <>
      <NotSaved saving={saving} />
      <MainAction onPress={press} busy={result === null && !isDown}>
        {word}
      </MainAction>
    </>
  );
  return (
    <Page
      title={say("setup_check.title")}
      place={place}
      step={step}
      onBack={onBack}
      action={action}
    >
      <News reading={reading} open={open} base={base} />
      <Groups machine={machine} base={base} />
    </Page>
  );
}

// Take in a file: first what is in it and what would change, then add.
import type { ComponentChildren } from "preact";
import type { ReadExportResult } from "../../core/messages";
import { Fault } from "../../elements/fault";
import { MainAction, PlaceLink } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { apart } from "../../store/log/journal";
import { isKey, say, sayCount, type CountKey, type Key } from "../../words/say";
import { CoreTrouble } from "../foot";
import { address, back, replace } from "../route";
import { countNew, useTakingIn, type Step } from "./reading";

const MINUTE_S = 60;
/** Nearer together than this, two phones agree well enough. */
const CLOCK_S = 600;

function FileChoice({
  name,
  onFile,
}: {
  readonly name: string;
  readonly onFile: (file: File) => void;
}) {
  return (
    <label class="file-choice">
      <span>{name}</span>
      <input
        type="file"
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          // Emptied, so that choosing the same file again is noticed.
          if (file !== undefined) onFile(file);
          event.currentTarget.value = "";
        }}
      />
    </label>
  );
}

const FINDINGS: Readonly<Record<"cut" | "damaged" | "no_header", Key>> = {
  cut: "takein.cut",
  damaged: "takein.damaged",
  no_header: "takein.no_header",
};

function odd(result: ReadExportResult): readonly string[] {
  const { file, report } = result;
  const counts: readonly (readonly [CountKey, number])[] = [
    ["takein.missing", Math.max(0, file.missing ?? 0)],
    ["takein.quarantined", file.quarantined],
    ["takein.newer", file.newer],
    ["takein.forks", report.forks.length],
    ["takein.gaps", report.gaps.length],
  ];
  const ahead = file.ahead_s ?? 0;
  return [
    ...file.findings.map((finding) => say(FINDINGS[finding])),
    ...counts.filter(([, count]) => count > 0).map(([key, count]) => sayCount(key, count)),
    ...(ahead > CLOCK_S
      ? [say("takein.clock", { minutes: String(Math.round(ahead / MINUTE_S)) })]
      : []),
  ];
}

function Machines({ result }: { readonly result: ReadExportResult }) {
  return (
    <ul class="facts">
      {result.machines.map(({ machine, name, count }) => (
        <li key={machine}>
          {sayCount("takein.machine", count, { name: name === "" ? say("takein.no_name") : name })}
        </li>
      ))}
    </ul>
  );
}

function Found({ result }: { readonly result: ReadExportResult }) {
  const fresh = countNew(result);
  return (
    <>
      <h2>{say("takein.shown")}</h2>
      <p role="status">{fresh === 0 ? say("takein.nothing_new") : sayCount("takein.new", fresh)}</p>
      <Machines result={result} />
      {result.file.known === 0 ? null : <p>{sayCount("takein.known", result.file.known)}</p>}
      {odd(result).map((sentence) => (
        <p key={sentence} class="found">
          {sentence}
        </p>
      ))}
    </>
  );
}

function NotAdded({ step }: { readonly step: Step }) {
  if (step.kind !== "not_added") return null;
  const key = `store.${step.trouble}`;
  return (
    <p class="not-saved" role="alert">
      <strong>{say("takein.not_added")}</strong> {isKey(key) ? say(key) : say("store.other")}
    </p>
  );
}

function actionOf(
  step: Step,
  add: (result: ReadExportResult) => void,
): ComponentChildren | undefined {
  if (step.kind === "added")
    return (
      <MainAction
        onPress={() => {
          replace();
        }}
      >
        {say("takein.back")}
      </MainAction>
    );
  if (!("result" in step)) return undefined;
  const { result } = step;
  const fresh = countNew(result);
  if (fresh === 0) return undefined;
  const isBusy = step.kind === "adding";
  return (
    <MainAction
      busy={isBusy}
      onPress={() => {
        if (!isBusy) add(result);
      }}
    >
      {isBusy ? say("takein.adding") : sayCount("takein.add", fresh)}
    </MainAction>
  );
}

export function TakeInScreen({ isSeveral = false }: { readonly isSeveral?: boolean }) {
  const { step, choose, add } = useTakingIn(
    isSeveral ? { kind: "refused", sentence: say("takein.several") } : { kind: "choose" },
  );
  const isOpen = step.kind !== "reading" && step.kind !== "adding";
  return (
    <Page
      title={say("takein.title")}
      onBack={() => {
        back();
      }}
      action={actionOf(step, add)}
    >
      {step.kind === "choose" ? <p>{say("takein.only_adds")}</p> : null}
      {step.kind === "reading" ? <p role="status">{say("takein.reading")}</p> : null}
      {step.kind === "refused" ? <Fault>{step.sentence}</Fault> : null}
      {step.kind === "added" ? <p role="status">{sayCount("takein.added", step.count)}</p> : null}
      {"result" in step ? <Found result={step.result} /> : null}
      {step.kind === "added" && apart.value > 0 ? (
        <PlaceLink to={address("log", "claimed")}>{say("claimed.decide")}</PlaceLink>
      ) : null}
      <NotAdded step={step} />
      {isOpen ? (
        <FileChoice
          name={step.kind === "choose" ? say("takein.choose") : say("takein.another")}
          onFile={choose}
        />
      ) : null}
      {step.kind === "choose" ? (
        <PlaceLink to={address("take-in", "camera")}>{say("frames.camera")}</PlaceLink>
      ) : null}
      <CoreTrouble />
    </Page>
  );
}

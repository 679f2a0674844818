// The frame of a set-up question: its fields are read by pycore at Continue, its doubts asked once.
import type { ComponentChildren } from "preact";
import { useEffect } from "preact/hooks";
import type { Operations, Unit } from "../../core/messages";
import { MainAction } from "../../elements/buttons";
import { DoubtQuestion } from "../../elements/doubt";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { Hint } from "../../elements/why";
import { doubtSentence, errorSentence } from "../../words/errors";
import { fieldById, fieldFromPath } from "../../words/fields";
import { write } from "../../words/numbers";
import { say } from "../../words/say";
import { useCore } from "../core";
import { checkOf, useGate, type Check } from "../gate";
import type { SetupProps } from "./steps";

/** One field of the page: where pycore knows it, and what stands in it. */
export interface Asked {
  readonly path: string;
  readonly text: string;
  readonly unit: Unit;
}

/** Reads every field alone, so that each gets its own sentence, at its own path. */
function useFields(fields: readonly Asked[], whole: (() => Promise<Check | null>) | undefined) {
  const core = useCore();
  return async (): Promise<Check | null> => {
    const answers = await Promise.all(
      fields.map(async ({ path, text, unit }): Promise<Check | null> => {
        const quantity = fieldById(path.replace(/\[\d+\]/, "")).quantity ?? "";
        const body: Operations["read_quantity"]["body"] = { text, quantity, unit };
        const check = checkOf(await core.ask("read_quantity", body));
        return check === null
          ? null
          : {
              errors: check.errors.map((error) => ({ ...error, path: `body.${path}` })),
              doubts: check.doubts.map((doubt) => ({ ...doubt, path: `body.${path}` })),
            };
      }),
    );
    const checks = answers.filter((check): check is Check => check !== null);
    const errors = checks.flatMap((check) => check.errors);
    const doubts = checks.flatMap((check) => check.doubts);
    if (errors.length > 0 || whole === undefined) return { errors, doubts };
    const together = await whole();
    return { errors: together?.errors ?? [], doubts };
  };
}

export interface Faults {
  /** The sentence at a field, by its path. */
  readonly at: (path: string) => string | undefined;
}

interface QuestionProps extends Pick<
  SetupProps,
  "form" | "change" | "next" | "onBack" | "place" | "step"
> {
  readonly title: string;
  readonly hint: string;
  readonly why: string;
  readonly fields?: readonly Asked[];
  /** What only makes sense together, such as low below high. */
  readonly whole?: (() => Promise<Check | null>) | undefined;
  /** A sentence when something that is no number is missing. */
  readonly missing?: string | null;
  readonly children: (faults: Faults) => ComponentChildren;
}

function useQuestion({ form, change, next, fields = [], whole, missing = null }: QuestionProps) {
  const look = useFields(fields, whole);
  const about = JSON.stringify([fields, missing]);
  const gate = useGate({
    look: async () => (missing === null ? look() : { errors: [missingError()], doubts: [] }),
    kept: form.kept,
    onKept: (kept) => {
      change({ kept });
    },
    onPass: next,
    about,
  });
  const at = (path: string): string | undefined => {
    const error = gate.errors.find((found) =>
      found.path.replace(/^body\.(machine\.)?/, "").startsWith(path),
    );
    return error === undefined ? undefined : errorSentence(error);
  };
  return { gate, at };
}

/** A choice that was not made; its sentence comes from the page that asks. */
function missingError() {
  return { code: "missing", path: "", got: null, limit: {}, message: "" } as const;
}

/** What goes wrong must be seen: the first faulty field comes into view, label first. */
function useFaultInView(count: number): void {
  useEffect(() => {
    if (count > 0) document.querySelector(".fault")?.scrollIntoView({ block: "center" });
  }, [count]);
}

export function Question(props: QuestionProps) {
  const { title, hint, why, onBack, place, step, fields = [], missing = null, children } = props;
  const { gate, at } = useQuestion(props);
  useFaultInView(gate.errors.length);
  const isAtField = (path: string): boolean =>
    fields.some(
      (field) =>
        path.startsWith(`body.${field.path}`) || path.startsWith(`body.machine.${field.path}`),
    );
  const loose = gate.errors.filter((error) => error.path === "" || !isAtField(error.path));
  if (gate.doubt !== null) {
    const field = fieldFromPath(gate.doubt.path).name;
    return (
      <Page title={title} place={place} step={step} onBack={onBack}>
        <DoubtQuestion
          sentence={doubtSentence(gate.doubt)}
          again={say("doubt.change", { field })}
          keep={say("doubt.keep", { value: write(gate.doubt.got) })}
          onAgain={gate.again}
          onKeep={gate.keep}
        />
      </Page>
    );
  }
  return (
    <Page
      title={title}
      place={place}
      step={step}
      onBack={onBack}
      action={<MainAction onPress={gate.pass}>{say("go_on")}</MainAction>}
    >
      <Hint id="hint" hint={hint} why={why} />
      {loose.map((error) => (
        <Fault key={error.path}>
          {error.path === "" && missing !== null ? missing : errorSentence(error)}
        </Fault>
      ))}
      {children({ at })}
    </Page>
  );
}

// The frame of a set-up question: its fields are read by pycore at Continue, its doubts asked once.
import type { ComponentChildren } from "preact";
import { useEffect } from "preact/hooks";
import type { DeskError, Doubt, Operations, Unit } from "../../core/messages";
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
import { checkOf, doubtName, emptyError, useGate, type Check } from "../gate";
import type { SetupProps } from "./steps";

/** One field of the page: where pycore knows it, and what stands in it. */
export interface Asked {
  readonly path: string;
  readonly text: string;
  readonly unit: Unit;
  /** Where the path alone does not tell what the number is. */
  readonly quantity?: string;
}

export function quantityOf({ path, quantity }: Pick<Asked, "path" | "quantity">): string {
  return quantity ?? fieldById(path.replace(/\[\d+\]/, "")).quantity ?? "";
}

/** Of two doubts about the same number one is enough. */
function once(doubts: readonly Doubt[]): readonly Doubt[] {
  return [...new Map(doubts.map((doubt) => [doubtName(doubt), doubt])).values()];
}

/** Reads every field alone, so that each gets its own sentence, at its own path. */
function useFields(fields: readonly Asked[], whole: (() => Promise<Check | null>) | undefined) {
  const core = useCore();
  return async (): Promise<Check | null> => {
    const answers = await Promise.all(
      fields.map(async ({ path, text, unit, ...asked }): Promise<Check | null> => {
        const quantity = quantityOf({ path, ...asked });
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
    // A refusal comes before a doubt: Keep on the one must not carry the other past the page.
    if (errors.length > 0) return { errors, doubts: [] };
    const together = await whole?.();
    if (together?.errors.length) return { errors: together.errors, doubts: [] };
    return { errors: [], doubts: once([...doubts, ...(together?.doubts ?? [])]) };
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
  /** Fields that pycore reads only together with others: their sentences stand at them. */
  readonly places?: readonly { readonly path: string }[];
  /** What only makes sense together, such as low below high. */
  readonly whole?: (() => Promise<Check | null>) | undefined;
  /** A sentence when something that is no number is missing, which needs no calculator to see. */
  readonly missing?: string | null;
  /** The text field that `missing` is about; without one it stands above the answers. */
  readonly missingAt?: string;
  readonly children: (faults: Faults) => ComponentChildren;
}

/** What the page sees itself: empty fields, and a choice that was not made. */
function plainErrors(fields: readonly Asked[], missing: string | null, at: string): DeskError[] {
  const empty = fields.filter(({ text }) => text.trim() === "");
  const errors = empty.map(({ path }) => emptyError(`body.${path}`));
  const choice = { code: "missing", path: at, got: null, limit: {}, message: "" } as const;
  return missing === null ? errors : [...errors, choice];
}

function useQuestion(props: QuestionProps) {
  const { form, change, next, fields = [], whole, missing = null, missingAt = "" } = props;
  // The whole form: some fields are read only together with others.
  const about = JSON.stringify([fields, missing, form]);
  const gate = useGate({
    plain: plainErrors(fields, missing, missingAt),
    look: useFields(fields, whole),
    kept: form.kept,
    onKept: (kept) => {
      change({ kept });
    },
    onPass: next,
    about,
  });
  const sentence = (error: DeskError): string =>
    error.code === "missing" && missing !== null ? missing : errorSentence(error);
  const at = (path: string): string | undefined => {
    const error = gate.errors.find((found) => pathOf(found).startsWith(path));
    return error === undefined ? undefined : sentence(error);
  };
  const own = [...fields, ...(props.places ?? [])];
  const places = missingAt === "" ? own : [...own, { path: missingAt }];
  const loose = gate.errors.filter(
    (error) => !places.some(({ path }) => pathOf(error).startsWith(path)),
  );
  return { gate, at, about, loose: loose.map(sentence) };
}

/** A path as the pages of the set-up name it. */
function pathOf(error: DeskError): string {
  return error.path.replace(/^body\.(machine\.)?/, "");
}

/** What goes wrong must be seen: the first faulty field comes into view, label first. */
function useFaultInView(count: number): void {
  useEffect(() => {
    if (count > 0) document.querySelector(".fault")?.scrollIntoView({ block: "center" });
  }, [count]);
}

export function Question(props: QuestionProps) {
  const { title, hint, why, onBack, place, step, children } = props;
  const { gate, at, about, loose } = useQuestion(props);
  useFaultInView(gate.errors.length);
  const frame = { title, place, step, onBack };
  if (gate.doubt !== null) {
    const field = fieldFromPath(gate.doubt.path).name;
    return (
      <Page {...frame}>
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
  const action = (
    <MainAction onPress={gate.pass} about={about}>
      {say("go_on")}
    </MainAction>
  );
  return (
    <Page {...frame} action={action}>
      <Hint id="hint" hint={hint} why={why} />
      {loose.map((text) => (
        <Fault key={text}>{text}</Fault>
      ))}
      {children({ at })}
    </Page>
  );
}

// The recipe's page: the whole check goes to pycore as it was typed. What comes back is a recipe, a doubt,
// a refusal, or nothing yet.
import type { DeskError, Doubt, PlanCheckResult } from "../../../core/messages";
import { PlaceLink } from "../../../elements/buttons";
import { DoubtQuestion } from "../../../elements/doubt";
import { Fault } from "../../../elements/fault";
import { planBody } from "../../../store/underway/walk";
import { doubtSentence, errorSentence } from "../../../words/errors";
import { fieldFromPath } from "../../../words/fields";
import { write } from "../../../words/numbers";
import { say } from "../../../words/say";
import { useAnswer, useCore } from "../../core";
import { doubtName } from "../../gate";
import { address, go } from "../../route";
import { CheckFrame, TryAgain } from "../checkframe";
import { NoRecipe } from "./norecipe";
import { Ready } from "./ready";
import type { CheckProps } from "../steps";

const OWN: readonly string[] = [
  "body.dip",
  "body.reading",
  "body.aim",
  "body.fill_to_depth",
  "body.usual",
  "body.second",
];

/** Doubts about the set-up were settled when it was saved; here only this check's own count. */
export function openDoubts(doubts: readonly Doubt[], kept: readonly string[]): readonly Doubt[] {
  const open = doubts.filter(
    (doubt) => OWN.some((part) => doubt.path.startsWith(part)) && !kept.includes(doubtName(doubt)),
  );
  // Two questions can doubt the same number: once is enough.
  const once = [...new Map(open.map((doubt) => [doubtName(doubt), doubt])).values()];
  return once.filter((doubt) => !isByLog(doubt) || !isAskedOf(doubt, once, kept));
}

const isByLog = ({ code }: Doubt): boolean => code.startsWith("unlike_");

/** Whether the number itself is asked about already, or was kept. */
function isAskedOf(doubt: Doubt, open: readonly Doubt[], kept: readonly string[]): boolean {
  const number = doubtName({ ...doubt, code: "unusual" });
  const isOpen = open.some((one) => !isByLog(one) && one.path === doubt.path);
  return isOpen || kept.some((name) => name === number || name.startsWith(`${number} `));
}

export function openDoubt(
  result: Pick<PlanCheckResult, "doubts">,
  kept: readonly string[],
): Doubt | null {
  return openDoubts(result.doubts, kept)[0] ?? null;
}

export function Waiting({ props }: { readonly props: CheckProps }) {
  const phase = useCore().phase.value;
  return (
    <CheckFrame props={props} title={say("recipe.title")}>
      <p role="status">
        {phase.kind === "starting" ? say("recipe.starting") : say("recipe.working")}
      </p>
    </CheckFrame>
  );
}

export function Down({ props }: { readonly props: CheckProps }) {
  return (
    <CheckFrame props={props} title={say("recipe.title")} action={<TryAgain />}>
      <p role="alert">{say("recipe.down")}</p>
    </CheckFrame>
  );
}

/** Leads to the page where the named field is answered, and back here over the answers. */
export function Refused({
  props,
  error,
}: {
  readonly props: CheckProps;
  readonly error: DeskError;
}) {
  const { name, walk, setup } = fieldFromPath(error.path);
  const id = props.machine.machine;
  const to =
    walk === undefined
      ? address("machines", id, "set-up", setup ?? "check", "change")
      : address("machines", id, walk, "change");
  return (
    <CheckFrame props={props} title={say("problem")}>
      <Fault>{errorSentence(error)}</Fault>
      <PlaceLink to={to}>{say("answers.change_this", { field: name })}</PlaceLink>
    </CheckFrame>
  );
}

export function Doubted({ props, doubt }: { readonly props: CheckProps; readonly doubt: Doubt }) {
  const { walk } = fieldFromPath(doubt.path);
  return (
    <CheckFrame props={props} title={say("doubt.name")}>
      <DoubtQuestion
        sentence={doubtSentence(doubt)}
        again={say("doubt.again")}
        keep={say("doubt.keep", { value: write(doubt.got) })}
        onAgain={() => {
          go("machines", props.machine.machine, walk ?? "answers", "change");
        }}
        onKeep={() => {
          props.change({ kept: [...props.walk.kept, doubtName(doubt)] });
        }}
      />
    </CheckFrame>
  );
}

export function RecipeScreen(props: CheckProps) {
  const { machine, walk } = props;
  const answer = useAnswer("plan_check", planBody(machine.body.machine, walk));
  if (answer === null || answer.kind === "dropped") return <Waiting props={props} />;
  if (answer.kind === "down") return <Down props={props} />;
  if (answer.kind === "error") {
    return answer.error.code === "no_factor" ? (
      <NoRecipe {...props} />
    ) : (
      <Refused props={props} error={answer.error} />
    );
  }
  const byLog = props.since.found?.doubts ?? [];
  const doubt = openDoubt({ doubts: [...answer.result.doubts, ...byLog] }, walk.kept);
  return doubt === null ? (
    <Ready props={props} result={answer.result} />
  ) : (
    <Doubted props={props} doubt={doubt} />
  );
}

// The same coolant by another method. Both results are kept; only a recipe compares them.
import { MainAction, SideAction } from "../../../elements/buttons";
import { Choice, type Option } from "../../../elements/fields/choice";
import { DoubtQuestion } from "../../../elements/doubt";
import { Fault } from "../../../elements/fault";
import { Page } from "../../../elements/page";
import { TextField } from "../../../elements/fields/textfield";
import { Hint } from "../../../elements/why";
import type { Typed } from "../../../core/messages";
import { planBody, secondTyped, type Method } from "../../../store/underway/walk";
import { cautionSentence, methodWord } from "../../../words/codes";
import { doubtSentence, errorSentence } from "../../../words/errors";
import { write, writeTyped } from "../../../words/numbers";
import { say } from "../../../words/say";
import { useCore } from "../../core";
import { checkOf, emptyError, useGate, type Check, type Gate } from "../../gate";
import { onlyAt } from "../asknumber";
import type { CheckProps } from "../steps";

const PATH = "body.second";
const FIELDS = [
  { name: "shows", quantity: "second_shows", part: "secondShows" },
  { name: "factor", quantity: "second_factor", part: "secondFactor" },
] as const;

type SecondProps = Pick<CheckProps, "machine" | "walk" | "change">;

/** The fluid's own factor for this method, where its sheet was written down. */
function ownFactor({ machine, walk }: Pick<CheckProps, "machine" | "walk">): Typed | undefined {
  const { titration_factor, split_factor } = machine.body.machine.fluid;
  return walk.method === "acid_split" ? split_factor : titration_factor;
}

/** A synthetic holds no oil, so there is nothing to split off. */
function methodsFor({ machine }: Pick<CheckProps, "machine">): readonly Option<Method>[] {
  const isSynthetic = machine.body.machine.fluid.type === "synthetic";
  const methods: readonly Method[] = isSynthetic ? ["titration"] : ["titration", "acid_split"];
  return methods.map((value) => ({
    value,
    word: methodWord(value),
    note: say(`method.${value}_note`),
  }));
}

function emptyOnes(props: SecondProps) {
  const { walk } = props;
  const isOwn = walk.secondFactor.trim() === "" && ownFactor(props) !== undefined;
  return FIELDS.filter(({ part }) => walk[part].trim() === "")
    .filter(({ name }) => name === "shows" || !isOwn)
    .map(({ name }) => emptyError(`${PATH}.${name}`));
}

/** Each number by itself, and where the check is complete the two methods beside each other. */
function useLook({ machine, walk }: SecondProps) {
  const core = useCore();
  const alone = async (field: (typeof FIELDS)[number]): Promise<Check | null> => {
    const text = walk[field.part];
    if (text.trim() === "") return null;
    const path = `${PATH}.${field.name}`;
    const body = { text, quantity: field.quantity, unit: "1" } as const;
    const check = checkOf(await core.ask("read_quantity", body));
    if (check === null) return null;
    const here = <T extends object>(found: T): T => ({ ...found, path });
    return { errors: check.errors.map(here), doubts: check.doubts.map(here) };
  };
  return async (): Promise<Check> => {
    const checks = (await Promise.all(FIELDS.map(alone))).filter((check) => check !== null);
    const errors = checks.flatMap((check) => check.errors);
    const doubts = checks.flatMap((check) => check.doubts);
    const isWhole = errors.length === 0 && walk.dip.trim() !== "" && "second" in secondTyped(walk);
    if (!isWhole) return { errors, doubts };
    const whole = await core.ask("plan_check", planBody(machine.body.machine, walk));
    return { errors: onlyAt(checkOf(whole), PATH)?.errors ?? [], doubts };
  };
}

function Fields({ props, gate }: { readonly props: SecondProps; readonly gate: Gate }) {
  const { walk, change } = props;
  const { method } = walk;
  if (method === "") return null;
  const at = (name: string): string | undefined => {
    const error = gate.errors.find(({ path }) => path.startsWith(`${PATH}.${name}`));
    return error === undefined ? undefined : errorSentence(error);
  };
  const own = ownFactor(props);
  const hint =
    own === undefined ? {} : { hint: say("second.factor_hint", { factor: writeTyped(own) }) };
  return (
    <>
      {method === "acid_split" ? <p class="example">{cautionSentence("strong_acid")}</p> : null}
      <TextField
        id="second-shows"
        label={say(`second.${method}_shows`)}
        fault={at("shows")}
        text={walk.secondShows}
        onText={(secondShows) => {
          change({ secondShows });
        }}
      />
      <TextField
        id="second-factor"
        label={say(`second.${method}_factor`)}
        {...hint}
        fault={at("factor")}
        text={walk.secondFactor}
        onText={(secondFactor) => {
          change({ secondFactor });
        }}
      />
    </>
  );
}

function useSecond(props: CheckProps) {
  const { walk, change, next } = props;
  const noMethod = walk.method === "" ? [emptyError(`${PATH}.method`)] : [];
  return useGate({
    plain: walk.method === "" ? noMethod : emptyOnes(props),
    look: useLook(props),
    kept: walk.kept,
    onKept: (kept) => {
      change({ kept });
    },
    onPass: next,
    about: `${walk.method} ${walk.secondShows} ${walk.secondFactor}`,
  });
}

function Side({ change, next }: Pick<CheckProps, "change" | "next">) {
  const none = (): void => {
    change({ method: "", secondShows: "", secondFactor: "" });
    next();
  };
  return <SideAction onPress={none}>{say("second.none")}</SideAction>;
}

function Question({ props, gate }: { readonly props: CheckProps; readonly gate: Gate }) {
  const { machine, walk, change } = props;
  const loose = gate.errors.find(({ path }) => path === `${PATH}.method`);
  const isOpen = walk.method === "";
  const fault = isOpen ? say("error.choose_method") : say("second.synthetic");
  return (
    <>
      <Hint id="hint" hint={say("second.method_hint")} why={say("second.method_why")} />
      {loose === undefined ? null : <Fault>{fault}</Fault>}
      <Choice
        name="method"
        labelledBy="question"
        options={methodsFor(props)}
        chosen={walk.method}
        onChoose={(method) => {
          // Drops and divisions are different things, so the digits do not go over.
          if (method !== walk.method) change({ method, secondShows: "", secondFactor: "" });
        }}
      />
      <Fields props={{ machine, walk, change }} gate={gate} />
    </>
  );
}

export function SecondScreen(props: CheckProps) {
  const { machine, walk, step, onBack } = props;
  const gate = useSecond(props);
  const { doubt } = gate;
  const about = `${walk.method} ${walk.secondShows} ${walk.secondFactor}`;
  const action = (
    <MainAction onPress={gate.pass} about={about}>
      {say("go_on")}
    </MainAction>
  );
  return (
    <Page
      title={say("second.method_title")}
      place={machine.body.machine.name}
      step={step}
      onBack={onBack}
      side={walk.method === "" ? undefined : <Side {...props} />}
      action={doubt === null ? action : undefined}
    >
      {doubt === null ? (
        <Question props={props} gate={gate} />
      ) : (
        <DoubtQuestion
          sentence={doubtSentence(doubt)}
          again={say("doubt.again")}
          keep={say("doubt.keep", { value: write(doubt.got) })}
          onAgain={gate.again}
          onKeep={gate.keep}
        />
      )}
    </Page>
  );
}

// The whole check on one screen, for who knows the way: the recipe on top, the rows below it, the keys at
// the bottom. Words, questions and gates are those of the guided pages, and so is what is stored.
import { useEffect, useState } from "preact/hooks";
import type { DeskError } from "../../../core/messages";
import { MainAction, OtherAction, PlaceLink } from "../../../elements/buttons";
import { Fault } from "../../../elements/fault";
import { Page } from "../../../elements/page";
import { errorSentence } from "../../../words/errors";
import { fieldFromPath } from "../../../words/fields";
import { say } from "../../../words/say";
import type { Gate } from "../../gate";
import { address, go } from "../../route";
import { Dilute, undiluted } from "../reading/blurred";
import { isSinceAsked, isToExplain } from "../lookback";
import { DespiteLine } from "../look/dead";
import { MeasureDoubt } from "../measuredoubt";
import { TryAgain } from "../checkframe";
import { ToGuided } from "../modeswitch";
import { Notes } from "../notes";
import { NotSaved, saveWord } from "../notsaved";
import { useZeroNotes } from "../reading/reading";
import { readAt, useSaving } from "../save";
import { ExplainFirst } from "../since";
import type { CheckProps } from "../steps";
import { ZeroNotes } from "../reading/zeronotes";
import { useAsking, useLogFirst } from "./asking";
import { LookRow, SideKeys } from "./beside";
import { isDepth, Keys } from "./keys";
import { LOOK_PATH, PATHS, useLive, type Live, type View } from "./live";
import { isOutOfReach, Result } from "./result";
import { cellId, Rows, rowsOf, type Row, type RowName } from "./rows";

type Ready = Extract<View, { kind: "ready" }>;

/** Pours what is poured by the bucket; anything else is saved as it is. */
function ReadyAction({ props, view }: { props: CheckProps; view: Ready }) {
  const isPoured = view.recipe.buckets > 0;
  const onward = isPoured ? (["pour"] as const) : ([] as const);
  const { machine, walk } = props;
  const { saving, press } = useSaving(machine, walk, view.result, undefined, onward);
  const asking = useLogFirst(props, press);
  const word = isPoured && saving.kind === "open" ? say("compact.pour") : saveWord(saving);
  return (
    <>
      <NotSaved saving={saving} />
      <MainAction
        onPress={asking.press}
        about={word}
        busy={asking.isAsking || saving.kind === "saving"}
      >
        {word}
      </MainAction>
    </>
  );
}

interface ActionProps {
  readonly props: CheckProps;
  readonly view: View;
  readonly gate: Gate;
}

function Action({ props, view, gate }: ActionProps) {
  const toRecipe = (): void => {
    go("machines", props.machine.machine, "recipe");
  };
  if (view.kind === "ready" && !isOutOfReach(view.recipe))
    return <ReadyAction props={props} view={view} />;
  if (view.kind === "ready")
    return <MainAction onPress={toRecipe}>{say("compact.ways")}</MainAction>;
  if (view.kind === "no_factor" || view.kind === "disagree")
    return <MainAction onPress={toRecipe}>{say("compact.more")}</MainAction>;
  if (view.kind === "down") return <TryAgain />;
  return (
    <MainAction onPress={gate.pass} about={JSON.stringify(props.walk)}>
      {say("answers.go_on")}
    </MainAction>
  );
}

/** A level that the log does not explain is told here too; what explains it is answered on its page. */
function Since({ machine, walk, since }: CheckProps) {
  if (isToExplain(since.found, walk))
    return <ExplainFirst since={since} walk={walk} machine={machine.machine} />;
  return isSinceAsked(since.found) ? (
    <PlaceLink to={address("machines", machine.machine, "since", "change")}>
      {say("since.title")}
    </PlaceLink>
  ) : null;
}

/** A sample that was diluted, or that has to be: the cure stands where the refusal does. */
function Dilution({ props, gate }: { readonly props: CheckProps; readonly gate: Gate }) {
  const { machine, walk, change } = props;
  const isOff = gate.errors.some(({ code }) => code === "off_scale");
  if (walk.diluted === "") return isOff ? <Dilute {...{ machine, walk, change }} /> : null;
  return (
    <OtherAction
      onPress={() => {
        change(undiluted(walk));
      }}
    >
      {say("reading.not_diluted")}
    </OtherAction>
  );
}

/** Faults of what has no row here, each with the way to its page. */
function Loose({ errors, machine }: { errors: readonly DeskError[]; machine: string }) {
  return (
    <>
      {errors.map((error) => {
        const { name, walk, setup } = fieldFromPath(error.path);
        const to =
          walk === undefined
            ? address("machines", machine, "set-up", setup ?? "check", "change")
            : address("machines", machine, walk, "change");
        return (
          <div key={error.path}>
            <Fault>{errorSentence(error)}</Fault>
            <PlaceLink to={to}>{say("answers.change_this", { field: name })}</PlaceLink>
          </div>
        );
      })}
    </>
  );
}

function isLoose({ path }: DeskError): boolean {
  return path !== LOOK_PATH && !Object.values(PATHS).some((own) => path.startsWith(own));
}

/** A doubt about a row is settled where its keys stand; about anything else, on its own page. */
function Doubted({ props, gate, row }: { props: CheckProps; gate: Gate; row: Row | undefined }) {
  const { doubt } = gate;
  if (doubt === null) return null;
  if (row !== undefined) {
    const again = row.row === "reading" ? say("doubt.read_again") : say("doubt.again");
    return <MeasureDoubt gate={gate} field={row.field} again={again} />;
  }
  const { name, walk } = fieldFromPath(doubt.path);
  const away: Gate = {
    ...gate,
    again: () => {
      gate.again();
      go("machines", props.machine.machine, walk ?? "answers", "change");
    },
  };
  return <MeasureDoubt gate={away} field={name} again={say("doubt.change", { field: name })} />;
}

function focusOn(row: RowName): void {
  document.querySelector<HTMLElement>(`[aria-labelledby^="${cellId(row)} "]`)?.focus();
}

/** The row under the keys; a refusal or a doubt brings its own row there. */
function useActive(rows: readonly Row[], gate: Gate) {
  const firstOpen = rows.find(({ text }) => text.trim() === "") ?? rows[0];
  const [chosen, setChosen] = useState<RowName>(firstOpen?.row ?? "dip");
  const at = (path: string): Row | undefined => rows.find(({ row }) => path.startsWith(PATHS[row]));
  const faulty = gate.errors.map(({ path }) => at(path)).find((row) => row !== undefined);
  const doubted = gate.doubt === null ? undefined : at(gate.doubt.path);
  const told = gate.errors.length === 0 ? undefined : faulty?.row;
  useEffect(() => {
    if (told !== undefined) focusOn(told);
  }, [told, gate.errors]);
  const row = rows.find((one) => one.row === chosen) ?? rows[0];
  return { row, doubted, setChosen };
}

function Body({ props, live, gate }: { props: CheckProps; live: Live; gate: Gate }) {
  const { machine, walk, change } = props;
  const rows = rowsOf(props);
  const { row, doubted, setChosen } = useActive(rows, gate);
  const [parts, setParts] = useState(false);
  const isParts = parts && row !== undefined && isDepth(row);
  const { soon, strength } = live;
  const notes = useZeroNotes(props, strength);
  const choose = (name: RowName): void => {
    setChosen(name);
    setParts(false);
  };
  /** Enter leads through the rows; at the last one it asks, as the key at the bottom does. */
  const enter = (name: RowName): void => {
    const next = rows[rows.findIndex((one) => one.row === name) + 1];
    if (next === undefined) gate.pass();
    else focusOn(next.row);
  };
  return (
    <>
      <LookRow
        machine={machine}
        isFaulty={gate.errors.some(({ path }) => path === LOOK_PATH)}
        onAnswer={() => {
          if (row !== undefined) focusOn(row.row);
        }}
      />
      <DespiteLine machine={machine.machine} />
      <Rows
        {...{ machine, walk, change, live, gate }}
        active={row?.row ?? "dip"}
        onActive={choose}
        onEnter={enter}
      />
      <Dilution props={props} gate={gate} />
      <Since {...props} />
      <ZeroNotes machine={machine} notes={notes} from="reading" />
      <Loose errors={gate.errors.filter(isLoose)} machine={machine.machine} />
      {gate.doubt !== null || row === undefined ? (
        <Doubted props={props} gate={gate} row={doubted} />
      ) : (
        <div class={isParts ? "depth-keys" : "compact-keys"}>
          <Keys {...{ machine, walk, change, row, soon }} parts={isParts} onParts={setParts} />
          {isParts ? null : <SideKeys machine={machine} walk={walk} />}
        </div>
      )}
      <Notes result={strength} />
    </>
  );
}

export function CompactScreen(props: CheckProps) {
  const { machine, walk, onBack } = props;
  const live = useLive(machine, walk, props.since);
  const gate = useAsking(props);
  return (
    <Page
      title={say("compact.title")}
      place={machine.body.machine.name}
      layout="compact"
      onBack={onBack}
      side={<ToGuided machine={machine} />}
      action={
        gate.doubt === null ? <Action props={props} view={live.view} gate={gate} /> : undefined
      }
    >
      <Result
        view={live.view}
        machine={machine}
        read_at={readAt(walk)}
        about={JSON.stringify([walk.dip, walk.reading, walk.cleanSide, walk.temperature])}
      />
      <Body props={props} live={live} gate={gate} />
    </Page>
  );
}

// Expected against found, before it is saved.
import { useEffect } from "preact/hooks";
import type { RecheckBody, RecheckResult } from "../../../core/messages";
import { PlaceLink } from "../../../elements/buttons";
import { DoubtQuestion } from "../../../elements/doubt";
import { Fault } from "../../../elements/fault";
import { Page } from "../../../elements/page";
import { isTooEarly } from "../../../store/log/deeds";
import { isWhole } from "../../../store/log/entry";
import { changeWalk, dipTyped, readingTyped } from "../../../store/underway/walk";
import { doubtSentence, errorSentence } from "../../../words/errors";
import { write } from "../../../words/numbers";
import { say } from "../../../words/say";
import { isoWithOffset } from "../../../words/times";
import { useAnswer } from "../../core";
import { doubtName } from "../../gate";
import { address, back, go, replace } from "../../route";
import { SaveAction } from "../notsaved";
import { useSavingAgain } from "./saving";
import { draftOf, type RecheckProps } from "./screen";
import { RecheckView } from "./view";

/** The question to pycore; null while there is no reading, or for a check without one. */
function bodyOf({ machine, pour, check, walk }: RecheckProps): RecheckBody | null {
  if (!isWhole(check) || walk.reading.trim() === "") return null;
  const typed = machine.body.machine;
  const { draw_off: out, pours } = pour.body;
  return {
    check: check.body,
    machine: typed,
    pours: [...pours],
    poured_at: pour.measured_at,
    reading: readingTyped(typed, walk),
    now: walk.at === "" ? isoWithOffset(new Date()) : walk.at,
    ...(out === undefined ? {} : { draw_off: out }),
    ...(walk.dip.trim() === "" ? {} : { dip: dipTyped(typed, walk) }),
  };
}

function Save({
  props,
  body,
  result,
}: {
  props: RecheckProps;
  body: RecheckBody;
  result: RecheckResult;
}) {
  const { machine, pour, walk } = props;
  const { saving, press } = useSavingAgain(machine.machine, draftOf(machine.machine), walk.id);
  const { reading, dip, now } = body;
  const told = {
    body: {
      machine: body.machine,
      of: pour.id,
      reading,
      now,
      ...(dip === undefined ? {} : { dip }),
    },
    shown: result,
  };
  return (
    <SaveAction
      saving={saving}
      onPress={() => {
        press(told);
      }}
    />
  );
}

function Found({
  props,
  result,
  now,
}: {
  readonly props: RecheckProps;
  readonly now: string;
  readonly result: RecheckResult;
}) {
  const { machine, pour, walk } = props;
  const id = machine.machine;
  const doubt = result.doubts.find((one) => !walk.kept.includes(doubtName(one)));
  if (doubt !== undefined)
    return (
      <DoubtQuestion
        sentence={doubtSentence(doubt)}
        again={say("doubt.again")}
        keep={say("doubt.keep", { value: write(doubt.got) })}
        onAgain={() => {
          go("machines", id, "recheck", doubt.path.startsWith("body.dip") ? "dip" : "reading");
        }}
        onKeep={() => {
          changeWalk(draftOf(id), { kept: [...walk.kept, doubtName(doubt)] });
        }}
      />
    );
  return (
    <>
      <RecheckView result={result} isEarly={isTooEarly(pour, now)} />
      {walk.dip.trim() === "" ? (
        <PlaceLink to={address("machines", id, "recheck", "dip")}>
          {say("recheck.level_with_dip")}
        </PlaceLink>
      ) : null}
    </>
  );
}

export function ResultScreen(props: RecheckProps) {
  const { machine } = props;
  const id = machine.machine;
  const body = bodyOf(props);
  const answer = useAnswer("recheck", body);
  useEffect(() => {
    if (body === null) replace("machines", id, "recheck");
  }, [body === null, id]);
  if (body === null) return null;
  const result = answer?.kind === "ok" ? answer.result : null;
  return (
    <Page
      title={say("recheck.result")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", id);
      }}
      action={result === null ? undefined : <Save props={props} body={body} result={result} />}
    >
      {answer?.kind === "error" ? <Fault>{errorSentence(answer.error)}</Fault> : null}
      {answer?.kind === "down" ? <p role="alert">{say("recipe.down")}</p> : null}
      {answer === null ? <p role="status">{say("recipe.working")}</p> : null}
      {result === null ? null : <Found props={props} result={result} now={body.now} />}
    </Page>
  );
}

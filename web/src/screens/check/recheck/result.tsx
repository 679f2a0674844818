// Expected against found, before it is saved.
import { useEffect } from "preact/hooks";
import type { BucketRow, RecheckBody, RecheckResult } from "../../../core/messages";
import { PlaceLink } from "../../../elements/buttons";
import { DoubtQuestion } from "../../../elements/doubt";
import { Fault } from "../../../elements/fault";
import { Page } from "../../../elements/page";
import { pouredAfter } from "../../../store/log/deeds";
import { isWhole } from "../../../store/log/entry";
import { unmixedAt } from "../../../store/log/mixing";
import { changeWalk, dipTyped, readingTyped } from "../../../store/underway/walk";
import { doubtSentence, errorSentence } from "../../../words/errors";
import { write } from "../../../words/numbers";
import { say } from "../../../words/say";
import { isoWithOffset } from "../../../words/times";
import { useAnswer } from "../../core";
import { doubtName } from "../../gate";
import { address, back, go, replace } from "../../route";
import { SaveAction } from "../notsaved";
import { joined } from "../pour/steps";
import { readAt } from "../save";
import { useSavingAgain } from "./saving";
import { draftOf, type RecheckProps } from "./screen";
import { RecheckView } from "./view";

const UNKNOWN: BucketRow = { count: 1, kind: "unknown", about: true };

/**
 * All that went in and out between check and reading: the recipe's parts, and what was told beside it. By a
 * clock that was set back nothing did, and pycore is asked about the pour alone.
 */
function wentIn(
  { machine, pour, check }: RecheckProps,
  now: string,
): Pick<RecheckBody, "pours" | "draw_off" | "poured_at"> {
  const since = pouredAfter(machine.machine, check.place, Date.parse(now));
  const { draw_offs, hasUnknown, rows, last } = since ?? {
    draw_offs: pour.body.draw_off === undefined ? [] : [pour.body.draw_off],
    hasUnknown: false,
    rows: pour.body.pours,
    last: pour,
  };
  const [out, another] = draw_offs;
  // The page adds up nothing: after two draw-offs there is nothing to compare with.
  const isUnknown = hasUnknown || another !== undefined;
  return {
    pours: isUnknown ? [...joined(rows), UNKNOWN] : [...joined(rows)],
    poured_at: last.measured_at,
    ...(out === undefined ? {} : { draw_off: out }),
  };
}

/** The question to pycore; null while there is no reading, or for a check without one. */
function bodyOf(props: RecheckProps): RecheckBody | null {
  const { machine, check, walk } = props;
  if (!isWhole(check) || walk.reading.trim() === "") return null;
  const typed = machine.body.machine;
  const now = readAt(walk) || isoWithOffset(new Date());
  return {
    check: check.body,
    machine: typed,
    ...wentIn(props, now),
    reading: readingTyped(typed, walk),
    now,
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
  const { machine, walk } = props;
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
      <RecheckView result={result} isEarly={unmixedAt(id, now) !== null} />
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

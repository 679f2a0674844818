// What is done about it: stop first, what makes it worse, what to do, whom to ask, what can hurt. Until
// pycore answers, and where it does not, the page says to stop and whom to ask.
import type { AdviseMishapResult } from "../../core/messages";
import { MainAction } from "../../elements/buttons";
import { Page } from "../../elements/page";
import { isKey, say } from "../../words/say";
import { sourceWord } from "../../words/sources";
import { useAnswer } from "../core";
import { back, go } from "../route";
import { who, WhoLink, type MishapProps } from "./screen";

const PARTS = ["stop", "never", "do", "ask", "safety"] as const;

type Row = AdviseMishapResult["rows"][number];

export function useAdvice({ machine, mishap }: MishapProps) {
  const { fluid } = machine.body.machine;
  return useAnswer("advise_mishap", {
    mishap,
    ...(fluid.type === "neat_oil" ? {} : { fluid_type: fluid.type }),
    ...(fluid.metals === undefined ? {} : { metals: fluid.metals }),
  });
}

function rowSentence(code: string): string {
  const key = `mishap_row.${code}`;
  return isKey(key) ? say(key) : code.replaceAll("_", " ");
}

function sourceOf(rows: readonly Row[]): string {
  return [...new Set(rows.map(({ source }) => sourceWord(source)))].join("; ");
}

/** One part of the page; the sources of its rows stand once below them. */
function Part({
  part,
  rows,
}: {
  readonly part: (typeof PARTS)[number];
  readonly rows: readonly Row[];
}) {
  if (rows.length === 0) return null;
  return (
    <section class={`mishap-part mishap-${part}`}>
      <h2>{say(`mishap_part.${part}`)}</h2>
      <ul>
        {rows.map(({ code }) => (
          <li key={code}>{rowSentence(code)}</li>
        ))}
        {part === "ask" ? <li>{say("mishap.who", { who: who() })}</li> : null}
      </ul>
      {part === "ask" ? <WhoLink /> : null}
      <p class="note">{say("look.source", { source: sourceOf(rows) })}</p>
    </section>
  );
}

export function AdviceScreen(props: MishapProps) {
  const { machine, mishap } = props;
  const id = machine.machine;
  const answer = useAdvice(props);
  const rows = answer?.kind === "ok" ? answer.result.rows : null;
  const isDown = answer !== null && rows === null && answer.kind !== "dropped";
  return (
    <Page
      title={say(`mishap.${mishap}`)}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", id, "wrong");
      }}
      action={
        <MainAction
          onPress={() => {
            go("machines", id, "wrong", mishap, "record");
          }}
        >
          {say("mishap.record")}
        </MainAction>
      }
    >
      {rows === null ? (
        <>
          <p class="look-never">{say("mishap.first")}</p>
          <p role="status">{say(isDown ? "mishap.down" : "mishap.waiting", { who: who() })}</p>
        </>
      ) : (
        PARTS.map((part) => (
          <Part key={part} part={part} rows={rows.filter((row) => row.part === part)} />
        ))
      )}
    </Page>
  );
}

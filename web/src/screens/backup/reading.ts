// A file on its way in: read, looked at, and added only after somebody has seen what is in it.
import { useEffect, useRef, useState } from "preact/hooks";
import type { Core } from "../../core/client";
import type { DeskError, ReadExportResult } from "../../core/messages";
import type { Taken } from "../../store/log/database";
import { readNews, whenRead } from "../../store/log/journal";
import { takeIn } from "../../store/log/takein";
import { troubleOf, type StoreTrouble } from "../../store/log/trouble";
import { MOST_BYTES, takeHanded } from "../../store/phone/handed";
import { errorSentence } from "../../words/errors";
import { say, type Key } from "../../words/say";
import { isoWithOffset } from "../../words/times";
import { useCore } from "../core";
import { HOME } from "../route";
import { takeArrived } from "./arrived";
import { storedLog } from "./asked";

export type Step =
  | { readonly kind: "choose" }
  | { readonly kind: "reading" }
  | { readonly kind: "refused"; readonly sentence: string }
  | { readonly kind: "shown" | "adding"; readonly result: ReadExportResult }
  | {
      readonly kind: "not_added";
      readonly result: ReadExportResult;
      readonly trouble: StoreTrouble;
    }
  | { readonly kind: "added"; readonly count: number };

const REFUSED: Readonly<Partial<Record<DeskError["code"], Key>>> = {
  file_empty: "error.file_empty",
  file_foreign: "error.file_foreign",
  file_newer: "error.file_newer",
  too_large: "takein.too_large",
  too_many: "takein.too_many",
  not_json: "takein.not_text",
};

function refusal(error: DeskError): string {
  const key = REFUSED[error.code];
  return key === undefined ? `${errorSentence(error)} ${say("takein.refused")}` : say(key);
}

async function look(core: Core, file: Blob): Promise<Step> {
  if (file.size > MOST_BYTES) return { kind: "refused", sentence: say("takein.too_large") };
  let text: string;
  try {
    text = await file.text();
  } catch {
    return { kind: "refused", sentence: say("takein.unreadable") };
  }
  const now = isoWithOffset(new Date());
  await whenRead();
  const answer = await core.ask("read_export", { text, ...storedLog(), now });
  if (answer.kind === "ok") return { kind: "shown", result: answer.result };
  const sentence = answer.kind === "error" ? refusal(answer.error) : say("core.failed");
  return { kind: "refused", sentence };
}

/** Entries come first in `added`, lines in quarantine behind them. */
export function countNew(result: ReadExportResult): number {
  return result.kinds.reduce((sum, { count }) => sum + count, 0);
}

async function add(result: ReadExportResult): Promise<Step> {
  const count = countNew(result);
  const taken: Taken[] = result.added.map((text, i) => ({ text, mine: false, whole: i < count }));
  try {
    await takeIn(taken, result.heads);
  } catch (error) {
    return { kind: "not_added", result, trouble: troubleOf(error) };
  }
  await readNews();
  return { kind: "added", count };
}

/** first: what to begin with where nothing comes by itself. */
export function useTakingIn(first: Step) {
  const core = useCore();
  const [step, setStep] = useState<Step>(first);
  const isChosen = useRef(false);
  const choose = (file: Blob): void => {
    isChosen.current = true;
    setStep({ kind: "reading" });
    void look(core, file).then(setStep);
  };
  const chooseHanded = async (): Promise<void> => {
    // A browser that keeps no files was handed none either.
    const file = await takeHanded(HOME).catch(() => null);
    if (file !== null && !isChosen.current) choose(file);
  };
  useEffect(() => {
    const text = takeArrived();
    if (text === null) void chooseHanded();
    else choose(new Blob([text]));
  }, []);
  return {
    step,
    choose,
    add: (result: ReadExportResult): void => {
      setStep({ kind: "adding", result });
      void add(result).then(setStep);
    },
  };
}

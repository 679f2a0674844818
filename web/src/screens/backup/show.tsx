// The last entries of one machine as square codes, one after the other, for another phone's camera.
import { useEffect, useMemo, useState } from "preact/hooks";
import { Page } from "../../elements/page";
import { framesOf } from "../../store/log/frames";
import type { MachineEntry } from "../../store/log/entry";
import { errorSentence } from "../../words/errors";
import { say, sayCount } from "../../words/say";
import { useAwake } from "../check/pour/wake";
import { CoreTrouble } from "../foot";
import { back } from "../route";
import { useMachineFile } from "./onemachine";

/** Never more than three changes in a second: WCAG 2.2, 2.3.1. */
const EACH_MS = 340;
const SECOND_MS = 1000;
/** Quiet zone of a QR code, in squares: ISO/IEC 18004. */
const BORDER = 4;
/** Holds 213 bytes at level M (ISO/IEC 18004, table 7); the same for every frame, so that nothing jumps. */
const VERSION = 10;

type Squares = readonly (readonly boolean[])[];

interface Drawn {
  readonly frames: readonly Squares[];
}

/** Run only by who shows or reads frames. */
async function drawn(text: string): Promise<Drawn | null> {
  const [frames, { encodeQR }] = await Promise.all([framesOf(text), import("qr")]);
  if (frames === null) return null;
  const drawing = { ecc: "medium", encoding: "byte", version: VERSION, border: BORDER } as const;
  return { frames: frames.map((frame) => encodeQR(frame, "raw", drawing)) };
}

/** Dark runs of each row as one path. */
function pathOf(squares: Squares): string {
  return squares
    .flatMap((row, y) =>
      row.map((isDark, x) => (isDark ? `M${String(x)} ${String(y)}h1v1h-1z` : "")),
    )
    .join("");
}

function Frames({ frames }: Drawn) {
  const [at, setAt] = useState(0);
  useEffect(() => {
    const timer = setInterval(() => {
      setAt((before) => (before + 1) % frames.length);
    }, EACH_MS);
    return () => {
      clearInterval(timer);
    };
  }, [frames]);
  const paths = useMemo(() => frames.map(pathOf), [frames]);
  const side = String(frames[0]?.length ?? 1);
  const round_s = Math.ceil((frames.length * EACH_MS) / SECOND_MS);
  return (
    <>
      <svg class="frame" viewBox={`0 0 ${side} ${side}`} role="img" aria-label={say("frames.code")}>
        <path class="frame-ground" d={`M0 0h${side}v${side}h-${side}z`} />
        <path class="frame-squares" d={paths[at] ?? ""} shape-rendering="crispEdges" />
      </svg>
      <p class="frame-at">{say("frames.at", { i: String(at + 1), n: String(frames.length) })}</p>
      <p class="note">{sayCount("frames.round", round_s)}</p>
    </>
  );
}

export function ShowScreen({ machine }: { readonly machine: MachineEntry }) {
  const { answer } = useMachineFile(machine);
  const [shown, setShown] = useState<Drawn | "long" | null>(null);
  const text = answer?.kind === "ok" ? answer.result.text : null;
  useAwake();
  useEffect(() => {
    if (text !== null)
      void drawn(text).then((made) => {
        setShown(made ?? "long");
      });
  }, [text]);
  return (
    <Page
      title={say("frames.title")}
      place={machine.body.machine.name}
      onBack={() => {
        back("machines", machine.machine, "hand-over");
      }}
    >
      {answer?.kind === "error" ? <p role="status">{errorSentence(answer.error)}</p> : null}
      {shown === null && answer?.kind !== "error" ? (
        <p role="status">{say("backup.preparing")}</p>
      ) : null}
      {shown === "long" ? <p role="status">{say("frames.too_many")}</p> : null}
      {shown === null || shown === "long" ? null : <Frames frames={shown.frames} />}
      <p class="note">{say("frames.how")}</p>
      <CoreTrouble />
    </Page>
  );
}

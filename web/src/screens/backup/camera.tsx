// Frames read from another phone's screen: each is ticked, and the whole goes the way of a file.
import { useEffect, useRef, useState } from "preact/hooks";
import { Fault } from "../../elements/fault";
import { Page } from "../../elements/page";
import { frameFrom, isComplete, textOf, withFrame, type Gathered } from "../../store/log/frames";
import { writeCount } from "../../words/numbers";
import { say, sayCount, type Key } from "../../words/say";
import { useAwake } from "../check/pour/wake";
import { back, replace } from "../route";
import { arrive } from "./arrived";

/** Wide enough for 65 squares of a screen held before the lens, small enough for an old phone. */
const WIDTH = 720;
/** Between two looks; a frame stands three times as long. */
const LOOK_MS = 100;

type Look = (picture: ImageData) => string | null;

/** Run only by who reads frames. What is no code is no news. */
async function reader(): Promise<Look> {
  const { default: decodeQR } = await import("qr/decode.js");
  return (picture) => {
    try {
      return decodeQR(picture);
    } catch {
      return null;
    }
  };
}

async function opened(): Promise<MediaStream | Key> {
  // Not there where the page came over plain HTTP.
  const media = (navigator as { readonly mediaDevices?: MediaDevices }).mediaDevices;
  if (media === undefined) return "frames.no_camera";
  try {
    return await media.getUserMedia({
      video: { facingMode: "environment", width: { ideal: 1280 } },
      audio: false,
    });
  } catch (error) {
    const isRefused = error instanceof DOMException && error.name === "NotAllowedError";
    return isRefused ? "frames.refused" : "frames.no_camera";
  }
}

function pictureOf(video: HTMLVideoElement, canvas: HTMLCanvasElement): ImageData | null {
  const { videoWidth, videoHeight } = video;
  if (videoWidth === 0) return null;
  const scale = Math.min(1, WIDTH / videoWidth);
  canvas.width = Math.round(videoWidth * scale);
  canvas.height = Math.round(videoHeight * scale);
  const pen = canvas.getContext("2d", { willReadFrequently: true });
  if (pen === null) return null;
  pen.drawImage(video, 0, 0, canvas.width, canvas.height);
  return pen.getImageData(0, 0, canvas.width, canvas.height);
}

/** Looks until `onText` has a frame for everything, or the page is left. */
async function watch(
  video: HTMLVideoElement,
  onText: (text: string) => Promise<boolean>,
  isOver: () => boolean,
): Promise<void> {
  const canvas = document.createElement("canvas");
  const look = await reader();
  for (;;) {
    if (isOver()) return;
    const picture = pictureOf(video, canvas);
    const text = picture === null ? null : look(picture);
    if (text !== null && (await onText(text))) return;
    await new Promise((done) => setTimeout(done, LOOK_MS));
  }
}

function stop(stream: MediaStream): void {
  stream.getTracks().forEach((track) => {
    track.stop();
  });
}

/** Reads what the camera sees; returns how to end it. */
function startCamera(
  video: HTMLVideoElement,
  onText: (text: string) => Promise<boolean>,
  onTrouble: (trouble: Key) => void,
): () => void {
  let isOver = false;
  let stream: MediaStream | null = null;
  const start = async (): Promise<void> => {
    const got = await opened();
    if (typeof got === "string") {
      onTrouble(got);
      return;
    }
    // Left while the phone asked whether it may.
    if (isOver) {
      stop(got);
      return;
    }
    stream = got;
    video.srcObject = got;
    await video.play().catch(() => undefined);
    await watch(video, onText, () => isOver);
  };
  void start();
  return () => {
    isOver = true;
    if (stream !== null) stop(stream);
  };
}

function useCamera() {
  const video = useRef<HTMLVideoElement>(null);
  const [gathered, setGathered] = useState<Gathered | null>(null);
  const [trouble, setTrouble] = useState<Key | null>(null);
  useEffect(() => {
    let all: Gathered | null = null;
    const onText = async (text: string): Promise<boolean> => {
      const frame = await frameFrom(text);
      if (frame === null) return false;
      all = withFrame(all, frame);
      setGathered(all);
      if (!isComplete(all)) return false;
      const whole = await textOf(all);
      setTrouble(whole === null ? "frames.broken" : null);
      if (whole === null) all = null;
      else {
        arrive(whole);
        replace("take-in");
      }
      return whole !== null;
    };
    return video.current === null ? undefined : startCamera(video.current, onText, setTrouble);
  }, []);
  return { video, gathered, trouble };
}

function Ticks({ gathered }: { readonly gathered: Gathered }) {
  const { count, parts } = gathered;
  return (
    <>
      <p role="status">{sayCount("frames.got", count, { got: writeCount(parts.size) })}</p>
      <ol class="frame-ticks" aria-hidden="true">
        {Array.from({ length: count }, (_, place) => (
          <li key={place} class={parts.has(place) ? "has" : ""}>
            {place + 1}
          </li>
        ))}
      </ol>
    </>
  );
}

export function CameraScreen() {
  const { video, gathered, trouble } = useCamera();
  useAwake();
  const isOff = trouble === "frames.no_camera" || trouble === "frames.refused";
  return (
    <Page
      title={say("frames.camera_title")}
      onBack={() => {
        back("take-in");
      }}
    >
      {trouble === null ? null : <Fault>{say(trouble)}</Fault>}
      {isOff ? null : (
        <video ref={video} class="camera" muted playsInline aria-label={say("frames.view")} />
      )}
      {gathered === null && !isOff ? <p role="status">{say("frames.point")}</p> : null}
      {gathered === null ? null : <Ticks gathered={gathered} />}
    </Page>
  );
}

// A text as frames that one phone shows as square codes and another one reads, in any order and as often as
// it likes: packed, cut, and each with the number of the set, its place, and a checksum. A frame is
// PW1, set (8), place and count (3 each, hexadecimal), the part in base64, checksum (4 hexadecimal).
const START = "PW1";
const SET = 8;
const PLACE = 3;
const CHECK = 4;
/** With its frame 197 bytes: at most 200, so that a phone's camera still tells the squares apart. */
const PART_BYTES = 132;
const MOST_FRAMES = 0xfff;
/** Of what comes out, so that a few frames cannot fill the memory; far above 20 entries. */
const MOST_BYTES = 4 * 1024 * 1024;

const FORM = new RegExp(
  `^${START}([0-9a-f]{${String(SET)}})([0-9a-f]{${String(PLACE)}})([0-9a-f]{${String(PLACE)}})([A-Za-z0-9+/=]{4,176})([0-9a-f]{${String(CHECK)}})$`,
);

type Bytes = Uint8Array<ArrayBuffer>;

async function hashOf(bytes: Bytes): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return [...digest].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

const checkOf = async (text: string): Promise<string> =>
  (await hashOf(new TextEncoder().encode(text))).slice(0, CHECK);

async function through(
  bytes: Bytes,
  change: ReadableWritablePair<BufferSource, BufferSource> | TransformStream,
): Promise<Bytes | null> {
  const reader = new Blob([bytes]).stream().pipeThrough(change).getReader();
  const parts: Bytes[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = (await reader.read()) as ReadableStreamReadResult<Bytes>;
    if (done) break;
    length += value.length;
    if (length > MOST_BYTES) {
      await reader.cancel();
      return null;
    }
    parts.push(value);
  }
  return new Uint8Array(await new Blob(parts).arrayBuffer());
}

const hex = (value: number): string => value.toString(16).padStart(PLACE, "0");

/** Null for a text that is too long to be shown. */
export async function framesOf(text: string): Promise<readonly string[] | null> {
  const packed = await through(
    new TextEncoder().encode(text),
    new CompressionStream("deflate-raw"),
  );
  if (packed === null) return null;
  const count = Math.ceil(packed.length / PART_BYTES);
  if (count > MOST_FRAMES) return null;
  const set = (await hashOf(packed)).slice(0, SET);
  const frames = Array.from({ length: count }, async (_, place) => {
    const part = packed.subarray(place * PART_BYTES, (place + 1) * PART_BYTES);
    const said = `${START}${set}${hex(place)}${hex(count)}${btoa(String.fromCharCode(...part))}`;
    return `${said}${await checkOf(said)}`;
  });
  return Promise.all(frames);
}

export interface Frame {
  readonly set: string;
  /** From 0. */
  readonly place: number;
  readonly count: number;
  readonly part: string;
}

/** Null for what is no frame, or is one that was read wrongly. */
export async function frameFrom(text: string): Promise<Frame | null> {
  const [, set = "", place = "", count = "", part = "", check = ""] = FORM.exec(text) ?? [];
  if (set === "" || (await checkOf(text.slice(0, -CHECK))) !== check) return null;
  const frame = { set, place: parseInt(place, 16), count: parseInt(count, 16), part };
  return frame.place < frame.count ? frame : null;
}

/** The frames of one set that were read so far. */
export interface Gathered {
  readonly set: string;
  readonly count: number;
  readonly parts: ReadonlyMap<number, string>;
}

/** A frame of another set begins anew: another phone, or the same one after another entry. */
export function withFrame(gathered: Gathered | null, frame: Frame): Gathered {
  const { set, place, count, part } = frame;
  const isSame = gathered?.set === set && gathered.count === count;
  if (isSame && gathered.parts.has(place)) return gathered;
  return { set, count, parts: new Map([...(isSame ? gathered.parts : []), [place, part]]) };
}

export const isComplete = ({ count, parts }: Gathered): boolean => parts.size === count;

/** Null where the parts do not make the set that they name. */
export async function textOf({ set, count, parts }: Gathered): Promise<string | null> {
  try {
    const bytes = Array.from({ length: count }, (_, place) => atob(parts.get(place) ?? ""))
      .join("")
      .split("")
      .map((sign) => sign.charCodeAt(0));
    const packed = new Uint8Array(bytes);
    if (!(await hashOf(packed)).startsWith(set)) return null;
    const text = await through(packed, new DecompressionStream("deflate-raw"));
    return text === null ? null : new TextDecoder("utf-8", { fatal: true }).decode(text);
  } catch {
    return null;
  }
}

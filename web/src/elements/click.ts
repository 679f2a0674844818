// A click at each tick of a pour, for eyes that are on the bucket. Off until somebody wants it; a phone
// that cannot loses nothing, since every tick changes words and shapes too.
import { chosenOf, writeSetting } from "../store/phone/settings";

export const SOUNDS = ["off", "on"] as const;
export type Sounds = (typeof SOUNDS)[number];

const SETTING = "sounds";
const HZ = 1_200;
const LENGTH_S = 0.06;
const APART_S = 0.18;
const LOUD = 0.4;
/** A fall by rule has no end at 0. */
const SILENT = 0.001;

export const chosenSounds = (): Sounds => chosenOf(SETTING, SOUNDS);

/** Returns false when the choice could not be kept. */
export const keepSounds = (sounds: Sounds): boolean => writeSetting(SETTING, sounds);

let context: AudioContext | null = null;

function clickAt(audio: AudioContext, from_s: number): void {
  const tone = audio.createOscillator();
  const volume = audio.createGain();
  tone.frequency.value = HZ;
  volume.gain.setValueAtTime(LOUD, from_s);
  volume.gain.exponentialRampToValueAtTime(SILENT, from_s + LENGTH_S);
  tone.connect(volume).connect(audio.destination);
  tone.start(from_s);
  tone.stop(from_s + LENGTH_S);
}

/** To be called while a press is handled: browsers allow no sound that nobody asked for. */
export function click(times: number): void {
  if (chosenSounds() === "off") return;
  try {
    context ??= new AudioContext();
    // Phones stop it while the screen is dark.
    void context.resume().catch(() => undefined);
    for (let n = 0; n < times; n += 1) clickAt(context, context.currentTime + n * APART_S);
  } catch {
    // No sound on this phone.
  }
}

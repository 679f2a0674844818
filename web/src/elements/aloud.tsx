// Reads a sentence aloud on request, with a voice of the phone itself: one that is fetched would need a
// network. Where the phone has none in this language, there is no button.
import { useEffect, useState } from "preact/hooks";
import { LOCALE, say } from "../words/say";

const baseOf = (tag: string): string => tag.split(/[-_]/)[0]?.toLowerCase() ?? "";

function ownVoice(): SpeechSynthesisVoice | null {
  const base = baseOf(LOCALE);
  const own = speechSynthesis
    .getVoices()
    .filter(({ localService, lang }) => localService && baseOf(lang) === base);
  return own.find(({ lang }) => lang === LOCALE) ?? own[0] ?? null;
}

/** Voices come late on most phones, and some engines have none at all. */
function useVoice(): SpeechSynthesisVoice | null {
  const [voice, setVoice] = useState<SpeechSynthesisVoice | null>(null);
  useEffect(() => {
    if (!("speechSynthesis" in window)) return undefined;
    const look = (): void => {
      setVoice(ownVoice());
    };
    look();
    speechSynthesis.addEventListener("voiceschanged", look);
    return () => {
      speechSynthesis.removeEventListener("voiceschanged", look);
    };
  }, []);
  return voice;
}

/** Another text, another page, or the phone put away: what is said then is about something else. */
function useSilenceAfter(text: string, onSilence: () => void): void {
  useEffect(() => {
    const silence = (): void => {
      if (!("speechSynthesis" in window)) return;
      speechSynthesis.cancel();
      onSilence();
    };
    const silenceHidden = (): void => {
      if (document.visibilityState === "hidden") silence();
    };
    window.addEventListener("pagehide", silence);
    document.addEventListener("visibilitychange", silenceHidden);
    return () => {
      window.removeEventListener("pagehide", silence);
      document.removeEventListener("visibilitychange", silenceHidden);
      silence();
    };
  }, [text]);
}

export function Aloud({ text }: { readonly text: string }) {
  const voice = useVoice();
  const [speaking, setSpeaking] = useState(false);
  const end = (): void => {
    setSpeaking(false);
  };
  useSilenceAfter(text, end);
  if (voice === null) return null;
  const press = (): void => {
    speechSynthesis.cancel();
    if (speaking) {
      end();
      return;
    }
    const spoken = new SpeechSynthesisUtterance(text);
    spoken.voice = voice;
    spoken.lang = voice.lang;
    spoken.onend = end;
    spoken.onerror = end;
    setSpeaking(true);
    speechSynthesis.speak(spoken);
  };
  return (
    <button type="button" class="place-link quiet-button" onClick={press}>
      {say(speaking ? "pour.aloud_stop" : "pour.aloud")}
    </button>
  );
}

// An entry is prepared once: pressed again with the same content, it is the same entry.
import { useRef } from "preact/hooks";

/** `prepare` is asked anew for other content only. */
export function useOnce<Told, Content>(
  prepare: (told: Told) => Promise<Content>,
): (told: Told) => Promise<Content> {
  const kept = useRef<{ readonly key: string; readonly content: Content } | null>(null);
  return async (told) => {
    const key = JSON.stringify(told);
    const content = kept.current?.key === key ? kept.current.content : await prepare(told);
    kept.current = { key, content };
    return content;
  };
}

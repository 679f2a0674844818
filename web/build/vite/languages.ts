import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";
import manifest from "./manifest.json" with { type: "json" };

type Words = Record<string, string | Record<string, string>>;

const folder = new URL("../../../shared/words/", import.meta.url);

/** Long presses on the app's icon offer these places; each has a sentence `shortcut.<place>`. */
const SHORTCUTS = ["check", "code", "handover", "log"] as const;

function allWords(): [code: string, words: Words][] {
  const names = readdirSync(fileURLToPath(folder)).filter((name) => name.endsWith(".json"));
  return names
    .sort()
    .map((name) => [
      name.replace(".json", ""),
      JSON.parse(readFileSync(new URL(name, folder), "utf8")) as Words,
    ]);
}

function sentence(words: Words, key: string): string {
  const text = words[key];
  if (typeof text !== "string") throw new Error(`shared/words has no sentence ${key}`);
  return text;
}

function manifestIn(code: string, words: Words): string {
  return JSON.stringify({
    ...manifest,
    name: sentence(words, "app.name"),
    short_name: sentence(words, "app.name"),
    description: sentence(words, "app.description"),
    lang: code,
    shortcuts: SHORTCUTS.map((place) => ({
      name: sentence(words, `shortcut.${place}`),
      url: `./#/${place}`,
      icons: manifest.icons.slice(0, 1),
    })),
  });
}

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");

/**
 * What must be there before any sentence is fetched: a manifest for each language, and in the page
 * what is said when no script starts.
 */
export function languages(): Plugin {
  const spoken = allWords();
  const inEach = (key: string): string =>
    spoken
      .map(([code, words]) => `<p lang="${code}">${escaped(sentence(words, key))}</p>`)
      .join("");
  return {
    name: "languages",
    generateBundle() {
      for (const [code, words] of spoken) {
        const fileName = `manifest.${code}.webmanifest`;
        this.emitFile({ type: "asset", fileName, source: manifestIn(code, words) });
      }
    },
    transformIndexHtml: {
      order: "post",
      handler(html) {
        const english = spoken.find(([code]) => code === "en")?.[1] ?? {};
        return {
          html: html
            .replace("%never_started%", inEach("app.never_started"))
            .replace("%no_script%", inEach("app.no_script")),
          tags: [
            {
              tag: "meta",
              attrs: { name: "description", content: sentence(english, "app.description") },
              injectTo: "head",
            },
          ],
        };
      },
    },
  };
}

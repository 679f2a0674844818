// The first step of the page: language, theme and the log, before anything is drawn. The screens run only
// after the sentences have come, since many keep sentences from the start.
import "./style/all.css";
import { beginCore } from "./core/begun";
import { followOtherWindows, readJournal } from "./store/log/journal";
import { moveNotes } from "./store/written/shop";
import { showTheme } from "./style/theme";
import { chosenLanguage, localeOf, wordsOf } from "./words/language";
import { speak } from "./words/say";

/** This script does not wait for the page's end, nor for its style. */
function parsed(): Promise<void> {
  if (document.readyState !== "loading") return Promise.resolve();
  return new Promise((done) => {
    document.addEventListener("DOMContentLoaded", () => {
      done();
    });
  });
}

async function start(): Promise<void> {
  // All that is waited for is asked for first. The sentences before Python: to make its thread takes
  // this one as long as they take to come.
  const language = chosenLanguage();
  const words = wordsOf(language);
  beginCore();
  followOtherWindows();
  void readJournal().then(moveNotes);
  const locale = localeOf(language);
  document.documentElement.lang = locale;
  const manifest = document.querySelector<HTMLLinkElement>("link[rel=manifest]");
  if (manifest !== null) manifest.href = `./manifest.${language}.webmanifest`;
  showTheme();
  speak(locale, await words);
  await parsed();
  await import("./main");
}

void start();

// The frame of every screen: Back at top left, where one is, the content, the main action below it.
import type { ComponentChildren } from "preact";
import { createContext } from "preact";
import { useContext, useLayoutEffect, useRef } from "preact/hooks";
import { say } from "../words/say";
import { useClearBar } from "./clearbar";

/** What a whole group of pages has in its top bar, under the name of the place, which it may cover. */
export const TopAside = createContext<ComponentChildren>(null);

interface PageProps {
  readonly title: string;
  readonly place?: string | undefined;
  readonly step?: string | undefined;
  readonly side?: ComponentChildren;
  readonly layout?: "plain" | "question" | "sheet" | "compact";
  readonly onBack?: (() => void) | undefined;
  readonly action?: ComponentChildren;
  /** The action stays in sight below a list that may be longer than the screen. */
  readonly stays?: boolean;
  /** So many pixels down it begins: a list, for whoever comes back from one of its entries. */
  readonly beginsAt?: number;
  readonly children: ComponentChildren;
}

function TopBar({
  place,
  step,
  side,
  onBack,
}: Pick<PageProps, "place" | "step" | "side" | "onBack">) {
  return (
    <header class="top-bar">
      {onBack === undefined ? (
        <AppSign />
      ) : (
        <button type="button" class="back" aria-label={say("back")} onClick={onBack}>
          <svg viewBox="0 0 24 24" width="28" height="28" aria-hidden="true">
            <path d="M15 4l-8 8 8 8" />
          </svg>
        </button>
      )}
      <div class="top-place">
        <span class="top-name">{place ?? say("app.name")}</span>
        <div class="top-line">
          {step === undefined ? null : <span class="top-step">{step}</span>}
          {useContext(TopAside)}
        </div>
      </div>
      {side}
    </header>
  );
}

/** A bucket outline with the level sign on a line inside it. */
function AppSign() {
  return (
    <svg class="app-sign" viewBox="0 0 32 32" width="36" height="36" aria-hidden="true">
      <path d="M4 5h24l-4 23H8z" />
      <path d="M6 17h20M12 10.500h8l-4 6.500z" />
    </svg>
  );
}

export function Page({
  title,
  place,
  step,
  side,
  layout = "plain",
  onBack,
  action,
  stays = false,
  beginsAt = 0,
  children,
}: PageProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  const main = useRef<HTMLElement>(null);
  const footer = useRef<HTMLElement>(null);
  // Before the page is first seen: later, it would move under a finger that is quick.
  useLayoutEffect(() => {
    document.title = `${title} – ${say("app.name")}`;
    // A new page is a new place: reading starts at its heading, not where the last button was.
    heading.current?.focus({ preventScroll: true });
    window.scrollTo(0, beginsAt);
  }, [title]);
  useClearBar(main, footer, stays, title);
  return (
    <div class={`page page-${layout}`}>
      <TopBar place={place} step={step} side={side} onBack={onBack} />
      <main ref={main}>
        <h1 ref={heading} id="question" tabIndex={-1}>
          {title}
        </h1>
        {children}
      </main>
      {action === undefined ? null : (
        <footer ref={footer} class={stays ? "actions actions-stay" : "actions"}>
          {action}
        </footer>
      )}
    </div>
  );
}

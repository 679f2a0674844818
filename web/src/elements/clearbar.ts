// A bar that stays over the end of a page: no target stands half under it, where a finger that means the
// one meets the other. What would is moved wholly under it before the page is first seen, and further up
// or down where the keyboard has scrolled the page.
import type { RefObject } from "preact";
import { useEffect, useLayoutEffect } from "preact/hooks";

/** As much of a target above the bar is one of its own. */
const TOUCH_PX = 60;
/** Below the screen nothing is seen; what looks for targets there wants as much of one (WCAG 2.2, 2.5.8). */
const LEAST_PX = 24;
const TARGETS = "a[href], button, input, select, summary, label";
/** A line of a list is hardly higher than the target in it; it moves as a whole. */
const ROW_MORE_PX = 24;
const MOST_PASSES = 8;

interface Span {
  readonly top: number;
  readonly bottom: number;
}

const moved = new Set<HTMLElement>();
/** The page came or changed while it was scrolled: at its top this is made up for. */
let isOwed = false;

/** What a label names is as large as the label. */
function targetsIn(main: HTMLElement): readonly HTMLElement[] {
  const all = [...main.querySelectorAll<HTMLElement>(TARGETS)].map(
    (one) => one.closest("label") ?? one,
  );
  return [...new Set(all)].filter((one) => one.getClientRects().length > 0);
}

function spanOf(element: HTMLElement): Span {
  const { top, bottom } = element.getBoundingClientRect();
  return { top, bottom };
}

/** So much of a target is seen above the bar, and too little of it. */
function isHalfUnder({ top, bottom }: Span, bar: Span): boolean {
  return top < bar.top - 0.5 && bottom > bar.top + 0.5 && bar.top - top < TOUCH_PX;
}

/** How far down a target has to go; 0 where it stands well. */
function wayDown({ top, bottom }: Span, bar: Span): number {
  const down = isHalfUnder({ top, bottom }, bar) ? bar.top - top : 0;
  const isCovered = top + down >= bar.top - 0.5 && top + down < bar.bottom;
  const rest = bottom + down - bar.bottom;
  return down + (isCovered && rest > 0.5 && rest < LEAST_PX ? LEAST_PX - rest : 0);
}

function rowOf(target: HTMLElement, main: HTMLElement): HTMLElement {
  const most = target.offsetHeight + ROW_MORE_PX;
  let row = target;
  for (let next = row.parentElement; next !== null && next !== main; next = next.parentElement) {
    if (next.offsetHeight > most) break;
    row = next;
  }
  return row;
}

/** Where the bar lies over a page that is longer than the screen; null where it does not. */
function barOf(footer: HTMLElement): Span | null {
  const { scrollHeight, clientHeight } = document.documentElement;
  if (getComputedStyle(footer).position !== "sticky" || scrollHeight <= clientHeight) return null;
  return { top: clientHeight - footer.offsetHeight, bottom: clientHeight };
}

function putBack(): void {
  for (const row of moved) row.style.removeProperty("margin-top");
  moved.clear();
}

/** Only of an unscrolled page: nothing moves where somebody reads. */
function clear(main: HTMLElement, footer: HTMLElement): void {
  isOwed = window.scrollY > 0;
  if (isOwed) return;
  putBack();
  const bar = barOf(footer);
  if (bar === null) return;
  for (let pass = 0; pass < MOST_PASSES; pass += 1) {
    const one = targetsIn(main).find((target) => wayDown(spanOf(target), bar) > 0);
    if (one === undefined) return;
    const row = rowOf(one, main);
    const before = parseFloat(getComputedStyle(row).marginTop);
    row.style.marginTop = `${String(before + wayDown(spanOf(one), bar))}px`;
    moved.add(row);
  }
}

/** Scrolls on until no target is half under the bar, and what has the focus is still seen. */
function settle(main: HTMLElement, footer: HTMLElement): void {
  const bar = barOf(footer);
  const focused = document.activeElement;
  // Under a press of a link or a key nothing moves: let go elsewhere, it would be lost.
  if (bar === null || !(focused instanceof HTMLElement) || !focused.matches(":focus-visible"))
    return;
  let isDown: boolean | null = null;
  for (let pass = 0; pass < MOST_PASSES; pass += 1) {
    const spans = targetsIn(main)
      .map(spanOf)
      .filter((span) => isHalfUnder(span, bar));
    if (spans.length === 0) return;
    const on = Math.max(...spans.map(({ bottom }) => bottom)) - bar.top;
    isDown ??= spanOf(focused).top - on >= 0;
    window.scrollBy(0, isDown ? on : Math.min(...spans.map(({ top }) => top)) - bar.top);
  }
}

/** For a page whose action stays in sight; ``about`` names what is on it. */
export function useClearBar(
  main: RefObject<HTMLElement | null>,
  footer: RefObject<HTMLElement | null>,
  stays: boolean,
  about: string,
): void {
  const inPlace = (act: (main: HTMLElement, footer: HTMLElement) => void): void => {
    if (main.current && footer.current) act(main.current, footer.current);
  };
  useLayoutEffect(() => {
    if (!stays) return;
    inPlace(clear);
    return putBack;
  }, [stays, about]);
  useEffect(() => {
    if (!stays || !main.current) return;
    const later = (): void => {
      requestAnimationFrame(() => {
        inPlace(clear);
      });
    };
    const watcher = new ResizeObserver(later);
    watcher.observe(main.current);
    // Of the last frame: browsers scroll before they tell of the focus, or after it.
    let seenY = window.scrollY;
    const scrolled = (): void => {
      seenY = window.scrollY;
      if (isOwed && seenY === 0) later();
    };
    const focused = (): void => {
      const before = seenY;
      requestAnimationFrame(() => {
        if (window.scrollY !== before) inPlace(settle);
      });
    };
    window.addEventListener("resize", later);
    window.addEventListener("scroll", scrolled, { passive: true });
    document.addEventListener("focusin", focused);
    return () => {
      watcher.disconnect();
      window.removeEventListener("resize", later);
      window.removeEventListener("scroll", scrolled);
      document.removeEventListener("focusin", focused);
    };
  }, [stays]);
}

// Places are hash routes: the phone's own Back works, and a static host needs to know only one page.
import { signal, type ReadonlySignal } from "@preact/signals";

export interface Route {
  readonly parts: readonly string[];
}

/** Where a square code leads to and what the service worker serves: this very app, wherever it is. */
export const HOME = new URL("./", document.baseURI).href;

/** What a printed square code carries behind the app's address. */
const SCANNED = /^#m=(.*)$/;

function read(): Route {
  const path = location.hash.replace(/^#\/?/, "");
  const scanned = SCANNED.exec(location.hash)?.[1];
  try {
    if (scanned !== undefined) return { parts: ["code", decodeURIComponent(scanned)] };
    return { parts: path.split("/").filter(Boolean).map(decodeURIComponent) };
  } catch {
    // A broken escape in a typed address is not a place; the list is.
    return { parts: [] };
  }
}

const current = signal<Route>(read());
export const route: ReadonlySignal<Route> = current;

interface Mark {
  readonly depth: number;
}

function depthNow(): number {
  const state = history.state as Partial<Mark> | null;
  return typeof state?.depth === "number" ? state.depth : 0;
}

let depth = depthNow();

/** What a place had when it was left: how far it was scrolled in pixels, how many rows stood in its list. */
const KEPT = ["scrolled", "rows"] as const;
type Kept = (typeof KEPT)[number];

/** Of each place on the way here, by its depth. */
const kept = new Map<string, number>();

/** For whoever comes back to this place; null on a place nobody has come back to. */
export function keptHere(what: Kept): number | null {
  return kept.get(`${what} ${String(depth)}`) ?? null;
}

export function keepHere(what: Kept, value: number): void {
  kept.set(`${what} ${String(depth)}`, value);
}

function forgetHere(): void {
  for (const what of KEPT) kept.delete(`${what} ${String(depth)}`);
}

/** A page says itself where it begins. For each place anew: WebKit's next ones do not take it over. */
function keepBrowserFromScrolling(): void {
  history.scrollRestoration = "manual";
}

/** Each place remembers how deep it is, so that our Back never leaves the app by accident. */
function arrive(): void {
  // What is being left is still drawn.
  keepHere("scrolled", window.scrollY);
  const state = history.state as Partial<Mark> | null;
  const isNew = typeof state?.depth !== "number";
  if (isNew) history.replaceState({ depth: depth + 1 }, "");
  keepBrowserFromScrolling();
  depth = depthNow();
  if (isNew) forgetHere();
  current.value = read();
}

export function followAddress(): void {
  keepBrowserFromScrolling();
  if (history.state === null) history.replaceState({ depth: 0 }, "");
  window.addEventListener("hashchange", arrive);
}

export function address(...parts: readonly string[]): string {
  return `#/${parts.map(encodeURIComponent).join("/")}`;
}

export function go(...parts: readonly string[]): void {
  location.hash = address(...parts);
}

/** Takes the place of the present one: Back does not return to a form that is done. */
export function replace(...parts: readonly string[]): void {
  history.replaceState({ depth }, "", address(...parts));
  forgetHere();
  current.value = read();
}

/** Back to where the person came from; at the first place, up to `parent`. */
export function back(...parent: readonly string[]): void {
  if (depth > 0) history.back();
  else replace(...parent);
}

/** Back over several pages at once, to where a way aside began. */
export function backOver(pages: number, ...parent: readonly string[]): void {
  if (depth >= pages) history.go(-pages);
  else replace(...parent);
}

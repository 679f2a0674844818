import { effect, signal, type ReadonlySignal } from "@preact/signals";
import type { Phase } from "./core/client";
import type { ShelfNews, ShelfQuestion, ShelfReport } from "./core/shelf";
import { serviceWorkerAddress } from "./policy";

/** `damaged`: a file is not what the build made. `unproven`: the files are whole, something else is not. */
export type OfflineState = "getting" | "ready" | "damaged" | "unproven" | "unavailable";

const CHECK_LIMIT_MS = 60_000;
// The first answers are on their way then; hashing beside them would slow them.
const QUIET_BEFORE_CHECK_MS = 500;

const state = signal<OfflineState>("getting");
const waiting = signal(false);
const lost = signal("");
const why = signal("");

/**
 * "ready" only while this page is served from the phone, every file was read back with the right
 * hash, and Python has started from them.
 */
export const ready: ReadonlySignal<OfflineState> = state;
/** A newer build lies complete on the phone and waits for a yes. */
export const updateWaiting: ReadonlySignal<boolean> = waiting;
/** The file on which the last install of a newer build failed; empty while none has failed. */
export const updateFailedOn: ReadonlySignal<string> = lost;
/** A code for the diagnosis line, such as "damaged: py-…/pyodide.asm.wasm". */
export const reason: ReadonlySignal<string> = why;

let registration: ServiceWorkerRegistration | undefined;
let lostFile = "";
let storeDrafts: () => Promise<void> = () => Promise.resolve();

export interface OfflineOptions {
  /** The core's phase: the files are checked once Python has answered or given up. */
  phase: ReadonlySignal<Phase>;
  /** Called in every open tab before it reloads into another build. */
  storeDrafts: () => Promise<void>;
}

/** Registers the service worker and keeps the signals above right. Call once. */
export function startOffline(options: OfflineOptions): void {
  storeDrafts = options.storeDrafts;
  // Some browsers leave it out, in private windows or without https, whatever the types say.
  const container = (navigator as { serviceWorker?: ServiceWorkerContainer }).serviceWorker;
  if (container === undefined) {
    set("unavailable", "no service worker here");
    return;
  }
  reloadOnOtherBuild(container);
  hearOfLostFiles(container);
  container
    .register(serviceWorkerAddress(), { updateViaCache: "none" })
    .then(watch)
    .catch((error: unknown) => {
      // Offline, the newest service worker cannot be asked for; the one that is there goes on.
      if (container.controller === null) set("unavailable", `not registered: ${String(error)}`);
    });
  let isChecking = false;
  const checkWhenQuiet = (): void => {
    // "ready" also says that Python has started, so nothing is promised before it has or has not.
    if (options.phase.value.kind === "starting") return;
    if (isChecking || container.controller === null) return;
    isChecking = true;
    setTimeout(() => {
      void checkAndRepair(container, options.phase).finally(() => {
        isChecking = false;
      });
    }, QUIET_BEFORE_CHECK_MS);
  };
  container.addEventListener("controllerchange", checkWhenQuiet);
  effect(checkWhenQuiet);
}

/** Takes the update that waits: every open tab stores its drafts and reloads once. */
export function useUpdate(): void {
  const question: ShelfQuestion = { kind: "use" };
  registration?.waiting?.postMessage(question);
}

function set(kind: OfflineState, text: string): void {
  why.value = text;
  state.value = kind;
}

function watch(found: ServiceWorkerRegistration): void {
  registration = found;
  const look = (): void => {
    waiting.value = found.waiting !== null && found.active !== null;
  };
  const follow = (worker: ServiceWorker | null): void => {
    let isInstalled = false;
    worker?.addEventListener("statechange", () => {
      look();
      if (worker.state === "installed") {
        isInstalled = true;
        lostFile = lost.value = "";
      }
      // One that was installed and is replaced becomes redundant too, and that is no failure.
      if (worker.state !== "redundant" || isInstalled) return;
      if (found.active === null) set("unavailable", `install failed: ${lostFile || "redundant"}`);
      else lost.value = lostFile || "redundant";
    });
  };
  look();
  follow(found.installing);
  // After a forced reload the browser keeps the page away from the service worker.
  const isPassedBy = found.active?.state === "activated" && found.installing === null;
  if (isPassedBy && navigator.serviceWorker.controller === null) {
    set("unavailable", "page was loaded past the service worker");
  }
  found.addEventListener("updatefound", () => {
    follow(found.installing);
  });
}

function reloadOnOtherBuild(container: ServiceWorkerContainer): void {
  // The first service worker of all takes over a page of its own build: nothing to reload.
  let hadOne = container.controller !== null;
  let isLeaving = false;
  container.addEventListener("controllerchange", () => {
    // With all data deleted there is none any more: a reload would only lose what is on the page.
    if (hadOne && !isLeaving && container.controller !== null) {
      isLeaving = true;
      void storeDrafts().finally(() => {
        location.reload();
      });
    }
    hadOne = true;
  });
}

/** An update that fails says nothing by itself: `update()` resolves, and its worker is simply gone. */
function hearOfLostFiles(container: ServiceWorkerContainer): void {
  container.addEventListener("message", (event: MessageEvent<ShelfNews>) => {
    lostFile = event.data.file;
  });
}

async function checkAndRepair(
  container: ServiceWorkerContainer,
  phase: ReadonlySignal<Phase>,
): Promise<void> {
  try {
    let report = await askShelf(container, "check");
    const damaged = report.bad;
    if (damaged.length > 0) {
      set("damaged", `damaged: ${damaged.join(" ")}`);
      report = await askShelf(container, "repair");
    }
    if (report.bad.length > 0) set("damaged", `damaged: ${report.bad.join(" ")}`);
    else if (report.build !== __BUILD_ID__) set("unproven", `files are of build ${report.build}`);
    else if (phase.value.kind === "failed") set("unproven", `python: ${phase.value.reason}`);
    else set("ready", damaged.length > 0 ? `mended: ${damaged.join(" ")}` : "");
  } catch (error) {
    set("unproven", `not checked: ${String(error)}`);
  }
}

function askShelf(
  container: ServiceWorkerContainer,
  kind: "check" | "repair",
): Promise<ShelfReport> {
  return new Promise((resolve, reject) => {
    const channel = new MessageChannel();
    const timer = setTimeout(() => {
      reject(new Error(`no answer to ${kind}`));
    }, CHECK_LIMIT_MS);
    channel.port1.onmessage = (event: MessageEvent<ShelfReport>) => {
      clearTimeout(timer);
      channel.port1.close();
      resolve(event.data);
    };
    const question: ShelfQuestion = { kind };
    container.controller?.postMessage(question, [channel.port2]);
  });
}

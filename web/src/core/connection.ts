import { wrap } from "comlink";
import { coreWorkerAddress } from "../policy";
import type { CoreWorker, Reply, StartKind } from "./api";

/** The plain start compiles every module, which takes a slow phone a quarter of a minute. */
const START_LIMIT_MS = 60_000;
/** Less for the image: it is either fast or of no use, and the plain start has to come after it. */
const IMAGE_LIMIT_MS = 15_000;
/** On a first visit the files come over a network, which may be slow without being broken. */
const FIRST_VISIT_LIMIT_MS = 180_000;
const ANSWER_LIMIT_MS = 10_000;
/**
 * A whole log inside a question. The shipped bundle works 0.8 to 1.5 ms at 1,000 characters of a long log
 * (`python3 -m tests.bench questions`, busy desk computer); a slow phone takes some six times as long, and
 * one that does other things twice that. To wait too long costs less than to end a worker that works.
 */
const MORE_MS_PER_CHARACTER = 0.02;

/** Set in the page's timeline when Python has answered for the first time. */
const FIRST_ANSWER_MARK = "core: first answer";

/** One worker's life. Every promise settles: a worker that dies or hangs is an error, not a wait. */
export interface Connection {
  /** Resolves, once Python has answered something, with the milliseconds that it took. */
  readonly started: Promise<{ readonly build: string; readonly milliseconds: number }>;
  /** Asks Python; rejects when the worker is gone or too slow, and is of no use afterwards. */
  handle(text: string): Promise<Reply>;
  /** Ends the worker; whatever is still asked of it rejects. */
  end(reason: string): void;
}

/** Creates a worker and starts Python in it; the worker knows by its name which start is asked for. */
export function connect(kind: StartKind): Connection {
  const createdAt_ms = performance.now();
  const worker = new Worker(coreWorkerAddress(), { type: "module", name: kind });
  const remote = wrap<CoreWorker>(worker);
  let die: (reason: Error) => void = () => undefined;
  const dead = new Promise<never>((_, reject) => {
    die = reject;
  });
  dead.catch(() => undefined);
  const end = (reason: string): void => {
    worker.terminate();
    die(new Error(reason));
  };
  worker.addEventListener("error", (event) => {
    event.preventDefault();
    end(event.message || "the worker's script could not be read");
  });
  worker.addEventListener("messageerror", () => {
    end("a message could not be read");
  });
  const within = <T>(limit_ms: number, what: string, reply: Promise<T>): Promise<T> => {
    const timer = setTimeout(() => {
      end(`${what} took more than ${limit_ms / 1000} s`);
    }, limit_ms);
    return Promise.race([reply, dead]).finally(() => {
      clearTimeout(timer);
    });
  };
  const start = async (): Connection["started"] => {
    const here_ms = kind === "image" ? IMAGE_LIMIT_MS : START_LIMIT_MS;
    const limit_ms = isServedFromPhone() ? here_ms : FIRST_VISIT_LIMIT_MS;
    const { build, first } = await within(limit_ms, "starting", remote.started());
    if (!first.ok) throw new Error(`first answer: ${JSON.stringify(first)}`);
    performance.mark(FIRST_ANSWER_MARK, { detail: kind });
    return { build, milliseconds: performance.now() - createdAt_ms };
  };
  return {
    started: start(),
    handle: (text) => {
      const limit_ms = ANSWER_LIMIT_MS + Math.ceil(text.length * MORE_MS_PER_CHARACTER);
      return within(limit_ms, "an answer", remote.handle(text));
    },
    end,
  };
}

/** Only what the service worker hands over is kept compiled; the first visit has none yet. */
export function isServedFromPhone(): boolean {
  // Some browsers leave it out, in private windows or without https, whatever the types say.
  const container = (navigator as { serviceWorker?: ServiceWorkerContainer }).serviceWorker;
  return container !== undefined && container.controller !== null;
}

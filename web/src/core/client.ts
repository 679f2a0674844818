import { signal, type ReadonlySignal, type Signal } from "@preact/signals";
import type { Reply, StartKind } from "./api";
import { takeBegun } from "./begun";
import { connect, type Connection } from "./connection";
import type { DeskError, Operations } from "./messages";
import { Queue, type Waiting } from "./queue";

/**
 * The image first. Where it does not fit or is damaged, plainly, from other files; and plainly once
 * more, because WebKit may refuse a worker that begins while another one is being ended.
 */
const STARTS: readonly StartKind[] = ["image", "plain", "plain"];

/** Set in the page's timeline with the reason when one of the starts fails. */
const FAILED_START_MARK = "core: start failed";

export type Phase =
  | { kind: "starting"; seconds: number }
  | { kind: "ready"; milliseconds: number }
  | { kind: "failed"; reason: string };

export type Answer<T> =
  | { kind: "ok"; result: T }
  | { kind: "error"; error: DeskError }
  | { kind: "dropped" }
  | { kind: "down"; reason: string };

export interface Question<Op extends keyof Operations> {
  readonly answer: ReadonlySignal<Answer<Operations[Op]["result"]> | null>;
  put(body: Operations[Op]["body"] | null): void;
  /**
   * Asks what will probably be put next, while the finger is still on the key. `answer` stays as it is; the
   * reply serves that very body, if it is put next, and nothing else.
   */
  readonly ahead: (body: Operations[Op]["body"]) => void;
}

export interface Core {
  readonly phase: ReadonlySignal<Phase>;
  /**
   * Asks pycore. With a slot, a newer question in the same slot makes the older one resolve as
   * "dropped". Never rejects. Questions asked before Python is ready wait.
   */
  ask<Op extends keyof Operations>(
    op: Op,
    body: Operations[Op]["body"],
    slot?: string,
  ): Promise<Answer<Operations[Op]["result"]>>;
  /**
   * A live question: `answer` is null from the moment a question is put until its own reply is
   * there, so an old result never stands beside a new question.
   */
  question<Op extends keyof Operations>(op: Op): Question<Op>;
  /** Ends the worker and starts anew: for the Try again button. */
  restart(): void;
}

/** Takes over the start of Python that the page's first step has begun. */
export function startCore(): Core {
  const line = new Line();
  let questions = 0;
  const ask: Core["ask"] = (op, body, slot) => line.ask(op, body, slot);
  return {
    phase: line.phase,
    ask,
    question(op) {
      questions += 1;
      const slot = `question ${questions}`;
      return liveQuestion((body, part) => line.ask(op, body, `${slot}${part}`, true));
    },
    restart: () => {
      line.restart();
    },
  };
}

/** A question that was asked before it was put. */
interface Early<T> {
  readonly key: string;
  readonly reply: Promise<Answer<T>>;
  got: Answer<T> | null;
}

/** A worker that was lost, or a question that was dropped, has said nothing about the body. */
const isReply = (got: Answer<unknown> | null): boolean =>
  got?.kind === "ok" || got?.kind === "error";

function liveQuestion<Op extends keyof Operations>(
  ask: (body: Operations[Op]["body"], part: string) => Promise<Answer<Operations[Op]["result"]>>,
): Question<Op> {
  const answer = signal<Answer<Operations[Op]["result"]> | null>(null);
  let turn = 0;
  let early: Early<Operations[Op]["result"]> | null = null;
  return {
    answer,
    put(body) {
      turn += 1;
      const mine = turn;
      answer.value = null;
      if (body === null) return;
      const known = early?.key === JSON.stringify(body) ? early : null;
      early = null;
      const got = known?.got ?? null;
      if (isReply(got)) {
        // Drawn together with the digit.
        answer.value = got;
        return;
      }
      const reply = known?.reply.then((got) =>
        isReply(got) || mine !== turn ? got : ask(body, ""),
      );
      void (reply ?? ask(body, "")).then((got) => {
        if (mine === turn) answer.value = got;
      });
    },
    ahead(body) {
      const key = JSON.stringify(body);
      if (early?.key === key) return;
      const mine: Early<Operations[Op]["result"]> = { key, reply: ask(body, " ahead"), got: null };
      early = mine;
      void mine.reply.then((got) => {
        mine.got = got;
      });
    },
  };
}

/** The line to the worker: one question at a time, and a new worker when the old one died. */
class Line {
  readonly phase: Signal<Phase> = signal({ kind: "starting", seconds: 0 });
  readonly #queue = new Queue();
  #connection: Connection | null = null;
  /** A worker that dies without having answered anything since the last new start stays dead. */
  #answeredSinceStart = true;
  #asked = 0;
  #clock: ReturnType<typeof setInterval> | undefined;

  constructor() {
    this.#start();
  }

  ask<T>(op: string, body: unknown, slot?: string, isLive = false): Promise<Answer<T>> {
    this.#asked += 1;
    const id = String(this.#asked);
    return new Promise((resolve) => {
      const text = JSON.stringify({ v: 1, id, op, body });
      const settle = resolve as (answer: Answer<unknown>) => void;
      if (this.phase.value.kind === "failed") {
        settle({ kind: "down", reason: this.phase.value.reason });
        return;
      }
      this.#queue.add({ id, text, slot, isLive, settle });
      void this.#next();
    });
  }

  restart(): void {
    this.#answeredSinceStart = true;
    this.#stop("started anew");
    this.#start();
  }

  #start(): void {
    const from_ms = performance.now();
    this.phase.value = { kind: "starting", seconds: 0 };
    this.#clock = setInterval(() => {
      const seconds = Math.floor((performance.now() - from_ms) / 1000);
      this.phase.value = { kind: "starting", seconds };
    }, 1000);
    this.#try(0);
  }

  /** One of STARTS; when it fails, the next one. */
  #try(turn: number): void {
    const connection = (turn === 0 ? takeBegun() : undefined) ?? connect(STARTS[turn] ?? "plain");
    this.#connection = connection;
    connection.started.then(ofThisBuild).then(
      (milliseconds) => {
        if (this.#connection !== connection) return;
        clearInterval(this.#clock);
        this.phase.value = { kind: "ready", milliseconds };
        void this.#next();
      },
      (error: unknown) => {
        if (this.#connection !== connection) return;
        const reason = reasonOf(error);
        performance.mark(FAILED_START_MARK, { detail: `${STARTS[turn] ?? ""}: ${reason}` });
        connection.end(reason);
        if (turn + 1 < STARTS.length) this.#try(turn + 1);
        else this.#fail(reason);
      },
    );
  }

  async #next(): Promise<void> {
    const connection = this.#connection;
    if (connection === null || this.phase.value.kind !== "ready") return;
    const question = this.#queue.take();
    if (question === null) return;
    try {
      const reply = await connection.handle(question.text);
      if (this.#connection !== connection) return;
      this.#answeredSinceStart = true;
      this.#queue.done(question, answerFrom(reply, question));
      void this.#next();
    } catch (error) {
      if (this.#connection === connection) this.#recover(reasonOf(error));
    }
  }

  #recover(reason: string): void {
    if (!this.#answeredSinceStart) {
      this.#fail(reason);
      return;
    }
    this.#answeredSinceStart = false;
    this.#stop(reason);
    this.#start();
  }

  #fail(reason: string): void {
    this.phase.value = { kind: "failed", reason };
    this.#stop(reason);
  }

  #stop(reason: string): void {
    clearInterval(this.#clock);
    const connection = this.#connection;
    this.#connection = null;
    connection?.end(reason);
    this.#queue.clear({ kind: "down", reason });
  }
}

/** A worker of another build would calculate by other rules than the page shows. */
function ofThisBuild({ build, milliseconds }: Awaited<Connection["started"]>): number {
  if (build !== __BUILD_ID__) throw new Error(`page is ${__BUILD_ID__}, worker is ${build}`);
  return milliseconds;
}

const reasonOf = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);

function answerFrom(reply: Reply, question: Waiting): Answer<unknown> {
  if (reply.id !== question.id) throw new Error("an answer to another question");
  const { error, result } = reply;
  return error === undefined ? { kind: "ok", result } : { kind: "error", error };
}

import type { Answer } from "./client";

export interface Waiting {
  readonly id: string;
  readonly text: string;
  readonly slot: string | undefined;
  /** Asked while somebody types: it goes before what can wait. */
  readonly isLive: boolean;
  readonly settle: (answer: Answer<unknown>) => void;
}

/** Questions in the order in which they were asked, live ones first; of each slot only the newest is wanted. */
export class Queue {
  #waiting: Waiting[] = [];
  #asked: Waiting | null = null;

  /** Adds a question and drops the older ones of its slot, also one that is being answered. */
  add(question: Waiting): void {
    const isOlder = (other: Waiting): boolean =>
      question.slot !== undefined && other.slot === question.slot;
    if (this.#asked !== null && isOlder(this.#asked)) this.#asked.settle({ kind: "dropped" });
    for (const other of this.#waiting.filter(isOlder)) other.settle({ kind: "dropped" });
    this.#waiting = [...this.#waiting.filter((other) => !isOlder(other)), question];
  }

  /** The next question, unless one is still being answered. */
  take(): Waiting | null {
    if (this.#asked !== null) return null;
    const next = this.#waiting.find(({ isLive }) => isLive) ?? this.#waiting[0] ?? null;
    this.#waiting = this.#waiting.filter((question) => question !== next);
    this.#asked = next;
    return next;
  }

  /** Settles the question that was taken; one that was dropped meanwhile stays dropped. */
  done(question: Waiting, answer: Answer<unknown>): void {
    this.#asked = null;
    question.settle(answer);
  }

  /** Settles everything with the same answer. */
  clear(answer: Answer<unknown>): void {
    const all = this.#asked === null ? this.#waiting : [this.#asked, ...this.#waiting];
    this.#asked = null;
    this.#waiting = [];
    for (const question of all) question.settle(answer);
  }
}

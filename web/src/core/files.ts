// The files that a start of Python reads. Straight from the phone's storage: through the service worker
// the same bytes take five times as long. Damaged bytes would run, and might still answer, so no answer
// leaves before every file is what the build made.
import { digestOfParts } from "./digest";

/** What the build wrote down; its text stands here alone, since the build repeats it at every mention. */
export const PYTHON = __PYTHON__;

/** Below the folder of this build's Python files. A hash is in its name, so an address means one content. */
export class Files {
  readonly #proofs: Promise<unknown>[] = [];
  readonly #fetch = self.fetch.bind(self);

  constructor(
    readonly home: string,
    /** Told of the first file that cannot be read or is damaged. */
    readonly fail: (reason: string) => void,
  ) {}

  /** As it is stored, else from the host: on a first visit, and where the browser keeps nothing. */
  async response(name: string): Promise<Response> {
    const address = this.home + name;
    try {
      const got = (await stored(address)) ?? (await this.#fetch(address));
      if (!got.ok) throw new Error(`status ${got.status}`);
      return got;
    } catch (error) {
      this.fail(`${name}: ${String(error)}`);
      throw error;
    }
  }

  /** The whole body; hashed while the caller goes on with it. */
  async bytes(name: string): Promise<ArrayBuffer> {
    // By way of a blob the browser hands over the bytes at once instead of piece by piece.
    const bytes = await (await (await this.response(name)).blob()).arrayBuffer();
    this.#proofs.push(this.#prove(name, bytes));
    return bytes;
  }

  /** For what is imported or compiled from a response of its own: reads it once more to hash it. */
  proveBeside(name: string): void {
    this.#proofs.push(this.bytes(name));
  }

  /** Resolves when every file that was read is whole. */
  async proven(): Promise<void> {
    // A proof may add another one while it is waited for.
    for (let done = 0; done < this.#proofs.length; done += 1) await this.#proofs[done];
  }

  async #prove(name: string, bytes: ArrayBuffer): Promise<void> {
    if ((await digestOfParts(bytes, PYTHON.part_bytes)) === PYTHON.digests[name]) return;
    this.fail(`${name}: not what the build made`);
    throw new Error(`${name} is damaged`);
  }
}

async function stored(address: string): Promise<Response | undefined> {
  // Some browsers leave it out, in private windows or without https, whatever the types say.
  const shelf = (self as { caches?: CacheStorage }).caches;
  return shelf?.match(address).catch(() => undefined);
}

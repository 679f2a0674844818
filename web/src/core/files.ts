// The files that a start of Python reads. Straight from the phone's storage: through the service worker
// the same bytes take five times as long. Damaged bytes would run, and might still answer, so no answer
// leaves before every file is what the build made.
import { digestOfParts } from "./digest";

/** What the build wrote down; its text stands here alone, since the build repeats it at every mention. */
export const PYTHON = __PYTHON__;

/** Below the folder of this build's Python files. A hash is in its name, so an address means one content. */
export class Files {
  readonly home = new URL(`../${PYTHON.folder}/`, self.location.href).href;
  readonly #fetch = self.fetch.bind(self);
  readonly #proofs: Promise<void>[] = [];
  readonly #fail: (reason: string) => void;

  /** `fail` hears of each file that cannot be read or is damaged, at once. */
  constructor(fail: (reason: string) => void) {
    this.#fail = fail;
  }

  /** By way of the service worker: only such a response keeps what the browser has compiled from it. */
  async fetched(name: string): Promise<Response> {
    const response = await this.#fetch(this.home + name);
    if (!response.ok) throw new Error(`status ${response.status}`);
    return response;
  }

  /** The whole body; its proof goes on beside the caller. */
  bytes(name: string): Promise<ArrayBuffer> {
    const bytes = this.#read(name);
    this.#await(name, bytes);
    return bytes;
  }

  /** For what has been imported or compiled from a response of its own: reads it once more and hashes it. */
  proveAfter(use: Promise<unknown>, name: string): void {
    this.#await(
      name,
      use.then(() => this.#read(name)),
    );
  }

  /** Resolves when every file that was asked for is whole. */
  async proven(): Promise<void> {
    await Promise.all(this.#proofs);
  }

  #await(name: string, bytes: Promise<ArrayBuffer>): void {
    const proof = bytes.then((read) => prove(name, read));
    proof.catch((error: unknown) => {
      this.#fail(`${name}: ${String(error)}`);
    });
    this.#proofs.push(proof);
  }

  async #read(name: string): Promise<ArrayBuffer> {
    // On a first visit nothing is stored yet, and some browsers store nothing.
    const response = (await stored(this.home + name)) ?? (await this.fetched(name));
    // By way of a blob a large body comes at once instead of piece by piece.
    return (await response.blob()).arrayBuffer();
  }
}

/** Without https the engine hashes nothing, and nothing is stored that could have been damaged since. */
async function prove(name: string, bytes: ArrayBuffer): Promise<void> {
  if (!self.isSecureContext) return;
  if ((await digestOfParts(bytes, PYTHON.part_bytes)) !== PYTHON.digests[name]) {
    throw new Error("not what the build made");
  }
}

async function stored(address: string): Promise<Response | undefined> {
  // Some browsers leave it out, in private windows or without https, whatever the types say.
  const shelf = (self as { caches?: CacheStorage }).caches;
  return shelf?.match(address).catch(() => undefined);
}

// Damaged bytes would run, and might still answer: no answer leaves before every file of a start is what the
// build made. `integrity` would hash on the thread that starts Python, which waits for it meanwhile.
import { integrityOf } from "./digest";

/** What the build wrote down; its text stands here alone, since the build repeats it at every mention. */
export const PYTHON = __PYTHON__;

/** The whole body, hashed while the caller goes on; rejects when it is not what the build made. */
export async function provenBytes(response: Promise<Response>, name: string): Promise<ArrayBuffer> {
  const bytes = await (await response).arrayBuffer();
  if ((await integrityOf(bytes)) !== PYTHON.hashes[name]) {
    throw new Error(`${name}: not what the build made`);
  }
  return bytes;
}

// node brotli.mjs FILE…: the size of each file as a good static host sends it. Node brings brotli
// along; Python does not.
import { readFileSync } from "node:fs";
import { brotliCompressSync, constants } from "node:zlib";

for (const path of process.argv.slice(2)) {
  const bytes = readFileSync(path);
  const params = {
    [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY,
    [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length,
  };
  console.log(brotliCompressSync(bytes, { params }).length);
}

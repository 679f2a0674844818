import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { ManifestTransform } from "workbox-build";
import { digestOf, integrityOf } from "./hashes";

/**
 * Gives each file of the site its hash. The first entry also carries the hash of the whole list,
 * which names the cache: a name made from one file would stay when another file changes.
 */
export function listFiles(siteFolder: string): ManifestTransform {
  return (found) => {
    const entries = found
      .sort((a, b) => (a.url < b.url ? -1 : 1))
      .map(({ url, revision, size }) => ({
        url,
        revision,
        size,
        integrity: integrityOf(readFileSync(join(siteFolder, url))),
      }));
    const whole = digestOf(entries.map(({ url, integrity }) => `${url} ${integrity}`));
    const manifest = entries.map((entry, i) => (i === 0 ? { ...entry, whole } : entry));
    return { manifest, warnings: [] };
  };
}

// A file that another app of the phone has handed to this one, where the system can do that. The
// service worker gets it and keeps it for the page, which shows what is in it before anything is added.

/** The field of the form, as the manifest names it. */
export const HANDED_FIELD = "log";
/** Where the form is sent, behind the scope: the page's own name for taking a file in. */
export const HANDED_TO = "take-in";
/** Behind it where more than one file came: each is looked at and added by itself. */
export const SEVERAL = "several";
/** As pycore's limit for a phone: looked at before a file is read into memory. */
export const MOST_BYTES = 20 * 1024 * 1024;

const KEPT_AT = "x-kept-at";
/** The page comes at once. Later nobody knows any more what was shared. */
const MOST_AGE_MS = 600_000;

/** Another copy of the app may live on the same host. No name of a build's cache begins like this. */
function shelfOf(scope: string): string {
  return `pailwright-handed ${new URL(scope).pathname}`;
}

function placeOf(scope: string): string {
  return new URL(HANDED_TO, scope).href;
}

/** Throws away what nobody came for: it must not stand there as what was handed over now. */
export async function dropHanded(scope: string): Promise<void> {
  await caches.delete(shelfOf(scope));
}

/** Of a file that is too large as much as shows that. */
export async function keepHanded(scope: string, file: Blob): Promise<void> {
  const shelf = await caches.open(shelfOf(scope));
  const headers = { [KEPT_AT]: String(Date.now()) };
  await shelf.put(placeOf(scope), new Response(file.slice(0, MOST_BYTES + 1), { headers }));
}

/** Hands it out once; null where there is none, or where its page never came for it. */
export async function takeHanded(scope: string): Promise<Blob | null> {
  const found = await caches.match(placeOf(scope), { cacheName: shelfOf(scope) });
  if (found === undefined) return null;
  const age_ms = Date.now() - Number(found.headers.get(KEPT_AT));
  const file = await found.blob();
  await dropHanded(scope);
  return age_ms < MOST_AGE_MS ? file : null;
}

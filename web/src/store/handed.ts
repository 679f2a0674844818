// A file that another app of the phone has handed to this one, where the system can do that. The
// service worker gets it and keeps it for the page, which shows what is in it before anything is added.

/** The field of the form, as the manifest names it. */
export const HANDED_FIELD = "log";
/** Where the form is sent, behind the scope: the page's own name for taking a file in. */
export const HANDED_TO = "take-in";
/** As pycore's limit for a phone: looked at before a file is read into memory. */
export const MOST_BYTES = 20 * 1024 * 1024;

/** Another copy of the app may live on the same host. No name of a build's cache begins like this. */
function shelfOf(scope: string): string {
  return `pailwright-handed ${new URL(scope).pathname}`;
}

function placeOf(scope: string): string {
  return new URL(HANDED_TO, scope).href;
}

/** Keeps the latest alone; of one that is too large as much as shows that. */
export async function keepHanded(scope: string, file: Blob): Promise<void> {
  const shelf = await caches.open(shelfOf(scope));
  await shelf.put(placeOf(scope), new Response(file.slice(0, MOST_BYTES + 1)));
}

/** Hands it out once; null where there is none. */
export async function takeHanded(scope: string): Promise<Blob | null> {
  const name = shelfOf(scope);
  const found = await caches.match(placeOf(scope), { cacheName: name });
  if (found === undefined) return null;
  const file = await found.blob();
  await caches.delete(name);
  return file;
}

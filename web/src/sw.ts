import { PrecacheController, PrecacheRoute } from "workbox-precaching";
import { registerRoute, setCatchHandler, setDefaultHandler } from "workbox-routing";
import { integrityOf } from "./core/digest";
import type { ShelfNews, ShelfQuestion, ShelfReport } from "./core/shelf";
import { dropHanded, HANDED_FIELD, HANDED_TO, keepHanded, SEVERAL } from "./store/phone/handed";

declare const self: ServiceWorkerGlobalScope;

interface ListedFile {
  url: string;
  revision: string | null;
  integrity: string;
  /** On the first entry: the hash of the whole list. */
  whole?: string;
}

const PAGE = "index.html";
const scope = new URL(self.registration.scope);
const files = self.__WB_MANIFEST as unknown as ListedFile[];
// Another copy of the app may live on the same host under another path, with caches of its own.
const ourCaches = `pailwright ${scope.pathname} `;
const cacheName = `${ourCaches}${files[0]?.whole ?? ""}`;
const isFirstInstall = self.registration.active === null;

const shelf = new PrecacheController({
  cacheName,
  fallbackToNetwork: false,
  plugins: [
    {
      handlerWillRespond: ({ request, response }) => Promise.resolve(withPolicy(request, response)),
      // Only an install fetches anything.
      fetchDidFail: async ({ request }) => {
        await tellOfLost(request.url);
        await fetchAnew(request.url);
      },
    },
  ],
});
shelf.precache(files);

const respondWithPage = shelf.createHandlerBoundToURL(PAGE);
registerRoute(
  ({ request, url }) => request.mode === "navigate" && isInScope(url),
  async (options) => {
    const rest = options.url.pathname.slice(scope.pathname.length);
    if (rest === "" || rest === PAGE) return respondWithPage(options);
    // Addresses inside the page are relative, so only the root of the scope can be the page.
    return Response.redirect(`${scope.pathname}#/${rest}${options.url.search}`, 302);
  },
);
registerRoute(
  new PrecacheRoute(shelf, {
    directoryIndex: "",
    cleanURLs: false,
    ignoreURLParametersMatching: [],
  }),
);
registerRoute(
  ({ request, url }) => request.mode === "navigate" && url.href === `${scope.href}${HANDED_TO}`,
  async ({ request }) => {
    // Where it cannot be kept the page asks for the file, as it does whenever none was handed over.
    const place = await keepForm(request).catch(() => HANDED_TO);
    return Response.redirect(`${scope.pathname}#/${place}`, 303);
  },
  "POST",
);
const refuse = (): Promise<Response> => Promise.resolve(Response.error());
setDefaultHandler(refuse);
setCatchHandler(refuse);

self.addEventListener("activate", (event) => {
  event.waitUntil(takeOver());
});

self.addEventListener("message", (event) => {
  const question = event.data as ShelfQuestion;
  const port = event.ports[0];
  if (question.kind === "use") event.waitUntil(self.skipWaiting());
  if (question.kind === "check")
    event.waitUntil(check().then((report) => port?.postMessage(report)));
  if (question.kind === "repair") {
    event.waitUntil(repair().then((report) => port?.postMessage(report)));
  }
});

function isInScope(url: URL): boolean {
  return url.origin === scope.origin && url.pathname.startsWith(scope.pathname);
}

/** The place of the page that goes on. */
async function keepForm(request: Request): Promise<string> {
  await dropHanded(scope.href);
  const [file, ...more] = (await request.formData()).getAll(HANDED_FIELD);
  if (more.length > 0) return `${HANDED_TO}/${SEVERAL}`;
  if (file instanceof File) await keepHanded(scope.href, file);
  return HANDED_TO;
}

async function tellOfLost(address: string): Promise<void> {
  const file = new URL(address).pathname.slice(scope.pathname.length);
  const news: ShelfNews = { kind: "lost", file };
  const windows = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  for (const window of windows) window.postMessage(news);
}

/** A damaged copy in the browser's own cache would fail every try to come: it is replaced. */
async function fetchAnew(address: string): Promise<void> {
  await fetch(address, { cache: "reload" })
    .then((fresh) => fresh.arrayBuffer())
    .catch(() => undefined);
}

async function removeOtherBuilds(): Promise<void> {
  const names = await caches.keys();
  const others = names.filter((name) => name.startsWith(ourCaches) && name !== cacheName);
  await Promise.all(others.map((name) => caches.delete(name)));
}

/** A page of an older build is never claimed: it would mix two versions. */
async function takeOver(): Promise<void> {
  await removeOtherBuilds();
  if (isFirstInstall) await self.clients.claim();
}

/**
 * On a host that sends no headers the policy comes from here, for the page and for the worker's
 * script. A response that needs nothing stays as it is: only as such does it keep the browser's
 * compiled code.
 */
function withPolicy({ destination }: Request, response: Response): Response {
  const isPage = response.headers.get("content-type")?.includes("text/html") === true;
  const wantsPolicy = isPage || destination === "worker";
  if (!wantsPolicy || response.headers.has("content-security-policy")) return response;
  const headers = new Headers(response.headers);
  headers.set("content-security-policy", __POLICY__);
  headers.set("x-content-type-options", "nosniff");
  headers.set("referrer-policy", "no-referrer");
  return new Response(response.body, { status: response.status, headers });
}

async function check(): Promise<ShelfReport> {
  const started_ms = performance.now();
  // An install that failed half-way leaves a cache behind that nothing else would remove.
  const { installing, waiting } = self.registration;
  if (installing === null && waiting === null) await removeOtherBuilds();
  const cache = await caches.open(cacheName);
  const report = { build: __BUILD_ID__, files: files.length, bytes: 0, bad: [] as string[] };
  // One after the other: all at once would hold every file in memory.
  for (const file of files) {
    const stored = await cache.match(keyOf(file));
    const bytes = stored && (await stored.arrayBuffer().catch(() => undefined));
    if (bytes === undefined || (await integrityOf(bytes)) !== file.integrity) {
      report.bad.push(file.url);
    }
    report.bytes += bytes?.byteLength ?? 0;
  }
  return { ...report, milliseconds: Math.round(performance.now() - started_ms) };
}

/** A host that has another build by now is refused by the hash, file by file. */
async function repair(): Promise<ShelfReport> {
  const cache = await caches.open(cacheName);
  const { bad } = await check();
  for (const file of files.filter(({ url }) => bad.includes(url))) {
    try {
      const fresh = await fetch(file.url, { integrity: file.integrity, cache: "reload" });
      if (fresh.ok) await cache.put(keyOf(file), fresh);
    } catch {
      continue; // the report below names it
    }
  }
  return check();
}

function keyOf(file: ListedFile): string {
  return shelf.getCacheKeyForURL(new URL(file.url, scope).href) ?? file.url;
}

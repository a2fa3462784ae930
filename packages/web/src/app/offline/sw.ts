// The service worker: keeps every file of one version of the site on the device and answers from there.
// A new version waits until a page asks for it or no page of the old one is open. The version before it stays kept beside it,
// so that a tab which still shows the old pages finds their parts.

interface SiteFile {
  readonly url: string;
  /** Null where the name of the file already holds a hash of what is in it. */
  readonly revision: string | null;
}

/** What this file uses of a service worker's world; the types of the pages don't know it. */
interface WorkerEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface RequestEvent extends Event {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}
interface ServiceWorkerWorld {
  readonly registration: ServiceWorkerRegistration;
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', listener: (event: WorkerEvent) => void): void;
  addEventListener(type: 'fetch', listener: (event: RequestEvent) => void): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<unknown>) => void): void;
}

/** Written in by the build. */
declare const FILES_OF_THE_SITE: readonly SiteFile[];

const world = self as unknown as ServiceWorkerWorld;
const files = FILES_OF_THE_SITE;
const { scope } = world.registration;
/** Other sites may share the origin, and other copies of this one: the caches are named by where the site lies. */
const cachePrefix = `hitchwright ${scope} `;
const cacheName = `${cachePrefix}${digestOf(JSON.stringify(files))}`;
const frontPage = `${scope}index.html`;
/** Entry of a cache that says since when its version has been the one in use. */
const sinceEntry = `${scope}?in-use-since`;

world.addEventListener('install', (event) => event.waitUntil(keepFiles()));
world.addEventListener('activate', (event) => event.waitUntil(takeOver()));
world.addEventListener('fetch', (event) => {
  const { method, url, cache } = event.request;
  if (method === 'GET' && url.startsWith(scope) && cache !== 'only-if-cached') event.respondWith(answer(event.request));
});
world.addEventListener('message', ({ data }) => {
  if (data === 'take over') void world.skipWaiting();
});

/** One after another: on a thin line the page that is being looked at comes first. */
async function keepFiles(): Promise<void> {
  const cache = await caches.open(cacheName);
  for (const file of files) await keepFile(cache, file);
}

/** What an attempt that broke off has kept is not asked for again, nor is what another version has under a hashed name. */
async function keepFile(cache: Cache, { url, revision }: SiteFile): Promise<void> {
  const address = new URL(url, scope).href;
  if ((await cache.match(address)) !== undefined) return;
  const known = revision === null ? await caches.match(address, { ignoreVary: true }) : undefined;
  await cache.put(address, known ?? (await fetched(address, revision === null ? 'default' : 'reload')));
}

/** A file from the network; a host's error page in its place must never be kept as the file. */
async function fetched(address: string, cache: RequestCache): Promise<Response> {
  const response = await fetch(address, { cache, priority: 'low' });
  const isPage = response.headers.get('content-type')?.startsWith('text/html') === true;
  if (!response.ok || isPage !== address.endsWith('.html'))
    throw new Error(`${address} is not there: ${response.status}`);
  // A page that was reached by a redirect must not answer a navigation, so it is kept as if it had not been.
  return response.redirected ? new Response(response.body, { headers: response.headers }) : response;
}

/** Keeps this version and the one that was in use before it; what a version that is just being fetched has kept is let be. */
async function takeOver(): Promise<void> {
  await (await caches.open(cacheName)).put(sinceEntry, new Response(String(Date.now())));
  const others = (await cacheNames()).filter((name) => name !== cacheName);
  const dated = await Promise.all(others.map(async (name) => ({ name, since: await inUseSince(name) })));
  const before = Math.max(...dated.map(({ since }) => since));
  const isFetching = world.registration.installing !== null || world.registration.waiting !== null;
  const spent = dated.filter(({ since }) => (since === 0 ? !isFetching : since < before));
  await Promise.all(spent.map(({ name }) => caches.delete(name)));
  await world.clients.claim();
}

async function cacheNames(): Promise<string[]> {
  return (await caches.keys()).filter((name) => name.startsWith(cachePrefix));
}

/** When the version of a cache was taken into use, in milliseconds since 1970; 0 for one that never was. */
async function inUseSince(name: string): Promise<number> {
  const entry = await (await caches.open(name)).match(sinceEntry);
  return entry === undefined ? 0 : Number(await entry.text());
}

async function answer(request: Request): Promise<Response> {
  const { origin, pathname } = new URL(request.url);
  const address = `${origin}${pathname}`;
  if (request.mode !== 'navigate') return (await keptFile(address)) ?? fetch(request);
  const isFront = address === scope || address === frontPage;
  const kept = await (isFront ? keptPage() : keptFile(address));
  return kept ?? fetch(request).catch(() => (isFront ? Response.error() : Response.redirect(scope)));
}

async function keptPage(): Promise<Response | undefined> {
  return (await caches.open(cacheName)).match(frontPage, { ignoreVary: true });
}

/** A file of this version, or of the one before it. */
async function keptFile(address: string): Promise<Response | undefined> {
  const names = await cacheNames();
  for (const name of [cacheName, ...names.filter((one) => one !== cacheName)]) {
    const kept = await (await caches.open(name)).match(address, { ignoreVary: true });
    if (kept !== undefined) return kept;
  }
  return undefined;
}

/** A short name for a text that differs where the text does: FNV-1a in 32 bits. */
function digestOf(text: string): string {
  const hash = [...text].reduce((sum, letter) => Math.imul(sum ^ (letter.codePointAt(0) ?? 0), 16777619), 2166136261);
  return (hash >>> 0).toString(36);
}

/**
 * Keeps the built pages, so that they open without a server. It never keeps an answer of /api: what
 * the record holds is kept by the pages' own worker, which knows how old it is.
 */

/** As much of a service worker's scope as is used; the browser's types for it exclude a page's. */
interface Scope {
  readonly location: Location;
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', listener: (event: Lasting) => void): void;
  addEventListener(type: 'fetch', listener: (event: Asked) => void): void;
}
interface Lasting {
  waitUntil(work: Promise<unknown>): void;
}
interface Asked {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}

/** Paths of everything that was built, put in by the build. */
declare const BUILT_FILES: readonly string[];
/** Another one whenever something built is another. */
declare const BUILT_VERSION: string;

const scope = self as unknown as Scope;
const NAME = 'hoistside pages ';
const CURRENT = `${NAME}${BUILT_VERSION}`;
const PAGE = '/index.html';
/** Pages that the server makes for who is not signed in, and what is no page. */
const SERVERS_OWN = ['/api', '/pair', '/trust'];
/** A network that is there and carries nothing is taken for one that is not. */
const WAIT_MS = 3000;

scope.addEventListener('install', (event) => event.waitUntil(keep()));
scope.addEventListener('activate', (event) => event.waitUntil(takeOver()));
scope.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== scope.location.origin) return;
  if (request.mode === 'navigate' && !isServersOwn(pathname)) event.respondWith(page(request));
  else if (BUILT_FILES.includes(pathname)) event.respondWith(file(request));
});

const isServersOwn = (path: string): boolean =>
  SERVERS_OWN.some((own) => path === own || path.startsWith(`${own}/`));

/** All files or none: pages of two versions never mix. */
async function keep(): Promise<void> {
  const cache = await caches.open(CURRENT);
  await cache.addAll(BUILT_FILES.map((path) => new Request(path, { cache: 'no-cache' })));
  await scope.skipWaiting();
}

/** The version before stays, for pages of it that are open still. */
async function takeOver(): Promise<void> {
  const names = (await caches.keys()).filter((name) => name.startsWith(NAME) && name !== CURRENT);
  for (const name of names.slice(0, -1)) await caches.delete(name);
  await scope.clients.claim();
}

/** The server's page where it answers, so that a new version shows at once; else the kept one. */
async function page(request: Request): Promise<Response> {
  const kept = await (await caches.open(CURRENT)).match(PAGE);
  if (!kept) return fetch(request);
  try {
    const fresh = await fetch(request, { signal: AbortSignal.timeout(WAIT_MS) });
    return fresh.status < 500 ? fresh : kept;
  } catch {
    return kept;
  }
}

const file = async (request: Request): Promise<Response> =>
  (await caches.match(request)) ?? fetch(request);

/**
 * Opens the app without a network: keeps the files of one build, and hands them out where the daemon
 * does not answer. What the daemon says (`/api/`) never passes through here.
 */

/** Files of this build by their path below the page, and its mark; the bundler puts them in front. */
declare const SHELL_FILES: readonly string[];
declare const SHELL_VERSION: string;

/** What a worker has and a page does not. */
interface WorkerEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface WorkerFetch extends WorkerEvent {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}
interface WorkerScope {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(kind: 'install' | 'activate', act: (event: WorkerEvent) => void): void;
  addEventListener(kind: 'fetch', act: (event: WorkerFetch) => void): void;
}

const worker = self as unknown as WorkerScope;
const scope = new URL(worker.registration.scope);
const OURS = 'boardcure-shell-';
const current = `${OURS}${SHELL_VERSION}`;
/** Pages of the build before may still be open and fetch a part of theirs. */
const KEPT_BUILDS = 2;
/** A network that is there but does not answer is given so long before the kept page is shown, ms. */
const PATIENCE_MS = 4_000;

const shell = new Set(SHELL_FILES);

worker.addEventListener('install', (event) => event.waitUntil(fetchShell()));
worker.addEventListener('activate', (event) => event.waitUntil(dropOldBuilds()));
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const file = fileOf(request);
  if (file === null) return;
  // A file with its content’s hash in its name never changes; all others are asked for first, so
  // that no kept page outlives its build.
  event.respondWith(file.startsWith('assets/') ? keptFirst(request) : networkFirst(request, file));
});

async function fetchShell(): Promise<void> {
  const cache = await caches.open(current);
  await cache.addAll(
    [...shell].map((path) => new Request(new URL(path, scope), { cache: 'reload' })),
  );
  await worker.skipWaiting();
}

async function dropOldBuilds(): Promise<void> {
  // In the order in which they were made.
  const builds = (await caches.keys()).filter((name) => name.startsWith(OURS));
  const dropped = builds.filter((name) => name !== current).slice(0, -(KEPT_BUILDS - 1));
  await Promise.all(dropped.map((name) => caches.delete(name)));
  await worker.clients.claim();
}

/** The file of the app that is asked for, below the scope; null for all else. */
function fileOf(request: Request): string | null {
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== scope.origin) return null;
  if (!url.pathname.startsWith(scope.pathname)) return null;
  const path = url.pathname.slice(scope.pathname.length);
  const file = path === 'index.html' ? '' : path;
  return shell.has(file) || file.startsWith('assets/') ? file : null;
}

async function keptFirst(request: Request): Promise<Response> {
  return (await caches.match(request)) ?? fetch(request);
}

async function networkFirst(request: Request, file: string): Promise<Response> {
  const kept = async () => (await caches.open(current)).match(new URL(file, scope));
  const asked = fetch(request).then((response) => (response.status >= 500 ? null : response));
  const late = new Promise<null>((resolve) => setTimeout(() => resolve(null), PATIENCE_MS));
  const response = await Promise.race([asked.catch(() => null), late]);
  return response ?? (await kept()) ?? fetch(request);
}

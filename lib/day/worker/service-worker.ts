/// <reference lib="webworker" />
// Keeps the page of brew days, or that of judging, itself on the device: its HTML, script and style, which hold no data of anybody. What is
// written and read of a brew or a tasting is never here; the page keeps that in its own database.

/** Written in when it is built. */
declare const VERSION: string;
/** "brew-day" or "judging": the first part of the addresses that it keeps. */
declare const PAGE_NAME: string;
declare const SHELL: readonly string[];

// The page of a window has the same name for itself, with other powers.
const worker = globalThis as unknown as ServiceWorkerGlobalScope;

const CACHE = `${PAGE_NAME}-${VERSION}`;
/** The page is the same at every address of its kind, so one of them is kept. */
const PAGE = `/${PAGE_NAME}/page`;

worker.addEventListener("install", (event) => {
  event.waitUntil(
    caches.open(CACHE).then((cache) => cache.addAll(SHELL.map((path) => new Request(path, { cache: "reload" })))),
  );
});

worker.addEventListener("activate", (event) => {
  event.waitUntil(forgetOlder().then(() => worker.clients.claim()));
});

async function forgetOlder(): Promise<void> {
  const names = await caches.keys();
  const older = names.filter((name) => name.startsWith(`${PAGE_NAME}-`) && name !== CACHE);
  await Promise.all(older.map((name) => caches.delete(name)));
}

worker.addEventListener("message", ({ data }) => {
  if (data === "take over") void worker.skipWaiting();
});

worker.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== worker.location.origin || !url.pathname.startsWith(`/${PAGE_NAME}/`))
    return;
  const isPage = request.mode === "navigate" || request.destination === "document";
  event.respondWith(fromCache(isPage ? PAGE : url.pathname, request));
});

/** The page and its files are of one version, so what is kept comes first and the network is only asked for the rest. */
async function fromCache(path: string, request: Request): Promise<Response> {
  const cache = await caches.open(CACHE);
  return (await cache.match(path)) ?? fetch(request);
}

interface Pushed {
  readonly title: string;
  readonly body: string;
  readonly url: string;
  readonly tag: string;
}

worker.addEventListener("push", (event) => {
  const { title, body, url, tag } = (event.data?.json() ?? {}) as Partial<Pushed>;
  // Every push must show something, or the browser takes the permission back.
  const shown = worker.registration.showNotification(title ?? "Brew day", {
    body: body ?? "",
    tag: tag ?? "brew-day",
    requireInteraction: true,
    data: { url: url ?? "/" },
  });
  event.waitUntil(shown);
});

worker.addEventListener("notificationclick", (event) => {
  event.notification.close();
  const data: unknown = event.notification.data;
  const url = typeof data === "object" && data !== null && "url" in data ? String(data.url) : "/";
  event.waitUntil(openPage(url));
});

async function openPage(url: string): Promise<void> {
  const wanted = new URL(url, worker.location.origin);
  if (wanted.origin !== worker.location.origin) return;
  const pages = await worker.clients.matchAll({ type: "window" });
  const open = pages.find((page) => new URL(page.url).pathname === wanted.pathname);
  if (open === undefined) await worker.clients.openWindow(wanted.href);
  else await open.focus();
}

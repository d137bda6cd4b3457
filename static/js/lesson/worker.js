// The service worker of lessons: network first, and what was kept where there is none. It keeps the pages of board and
// lectern and their scripts and styles, and nothing else; events and answers are kept by the page itself.

const CACHE = "countfold-lessons";
const PAGE = /^\/lessons\/[^/]+\/(board|lectern)\/$/;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("fetch", (event) => {
  const { pathname, origin } = new URL(event.request.url);
  const kept = origin === self.location.origin && (PAGE.test(pathname) || pathname.startsWith("/static/"));
  if (event.request.method === "GET" && kept) event.respondWith(answer(event.request));
});

async function answer(request) {
  const cache = await caches.open(CACHE);
  try {
    const fresh = await fetch(request);
    if (fresh.ok && !fresh.redirected) await cache.put(request, fresh.clone());
    return fresh;
  } catch (problem) {
    const held = await cache.match(request, { ignoreVary: true });
    if (held) return held;
    throw problem;
  }
}

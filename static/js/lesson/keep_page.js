// Lets the browser keep this page and its scripts, so that a reload works without network. Only where the browser gives a
// service worker: over HTTPS, or on the server's own machine.

const CACHE = "countfold-lessons";

export async function keepPage({ worker }) {
  if (!navigator.serviceWorker || !globalThis.caches || !worker) return;
  try {
    await navigator.serviceWorker.register(worker, { scope: "/lessons/" });
    const cache = await caches.open(CACHE);
    const parts = performance.getEntriesByType("resource").map((entry) => entry.name)
      .filter((name) => new URL(name).pathname.startsWith("/static/"));
    await cache.addAll([location.pathname, ...new Set(parts)]);
  } catch { /* the page works; only a reload needs the network */ }
}

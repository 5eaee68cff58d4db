// Pages that were seen open again without the laptop. The network always comes first: an old page is shown only when no new one can be had.
const shelf = "gudgeon-pages-1";
const patience = 4000;
const most = 400;
const never = ["/others/", "/intake/", "/clock.svg", "/phones", "/pair", "/sw.js"];

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", event => event.waitUntil(self.clients.claim()));

self.addEventListener("fetch", event => {
  const address = new URL(event.request.url);
  if (event.request.method !== "GET" || address.origin !== location.origin || never.some(n => address.pathname.startsWith(n))) return;
  event.respondWith(/^\/(assets|picture)\//.test(address.pathname) ? kept(event.request) : fresh(event.request));
});

// What has its content in its address never changes.
async function kept(request) {
  const cache = await caches.open(shelf);
  const had = await cache.match(request);
  if (had) return had;
  const answer = await fetch(request);
  if (answer.ok) await cache.put(request, answer.clone());
  return answer;
}

async function fresh(request) {
  const cache = await caches.open(shelf);
  try {
    const answer = await fetch(request, { signal: AbortSignal.timeout(patience) });
    if (answer.ok && !answer.redirected) {
      await cache.put(request, answer.clone());
      await prune(cache);
    }
    // A phone that is not let in any more keeps nothing to look at.
    if (answer.status === 401) await caches.delete(shelf);
    return answer;
  } catch (away) {
    const had = await cache.match(request, { ignoreSearch: true });
    if (had) return had;
    throw away;
  }
}

async function prune(cache) {
  const keys = await cache.keys();
  for (const key of keys.slice(0, Math.max(0, keys.length - most))) await cache.delete(key);
}
